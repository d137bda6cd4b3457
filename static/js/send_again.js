// After signing in again: sends the form that was kept. Without scripts its button does the same.
document.querySelector("form[data-send-again]")?.requestSubmit();
