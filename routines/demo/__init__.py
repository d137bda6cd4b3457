"""The demo school: invented people, classes, counts and lessons, made through the app's own actions."""
