// Stands in for optional parts of a dependency that this project never calls.
