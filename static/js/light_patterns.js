// Lights patterns up.
