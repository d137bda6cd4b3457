"""What is kept, and one's own words."""

from django.urls import path

from routines.own_words import views

urlpatterns = [
    path("what-is-kept/", views.what_is_kept, name="what_is_kept"),
    path("me/words/", views.own_words, name="own_words"),
    path("me/words/<uuid:key>/drop/", views.drop_words, name="own_words_drop"),
    path("me/words/<uuid:key>/words.zip", views.words_zip, name="own_words_zip"),
]
