"""Where words are removed everywhere. A look goes by its key; no address holds a word."""

from django.urls import path

from routines.erasing import views

urlpatterns = [
    path("remove-words/", views.erase_words, name="erase_words"),
    path("remove-words/look/<uuid:key>/", views.erase_look, name="erase_look"),
    path("remove-words/look/<uuid:key>/again/", views.erase_look_again, name="erase_look_again"),
    path("remove-words/look/<uuid:key>/leave/", views.erase_leave, name="erase_leave"),
    path("remove-words/look/<uuid:key>/remove/", views.erase_begin, name="erase_begin"),
    path("remove-words/progress/", views.erase_progress, name="erase_progress"),
    path("remove-words/finish/", views.erase_finish, name="erase_finish"),
]
