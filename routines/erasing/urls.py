"""Where words are removed everywhere."""

from django.urls import path

from routines.erasing import views

urlpatterns = [
    path("remove-words/", views.erase_words, name="erase_words"),
]
