"""What the plan page offers beside what the teacher writes: few at a time, each a question back to the grid."""
