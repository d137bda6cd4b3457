"""Choosing a file of routines."""

from typing import Any

from django import forms
from django.core.files.uploadedfile import UploadedFile
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from routines.exchange.reading import BYTES_LIMIT, FileError, Read, read


class ImportForm(forms.Form):
    """`read` is what the file holds; it is there once the form is valid."""

    file = forms.FileField(
        label=_("A file of counts"),
        help_text=_(
            "A .json file that was exported from a Countfold bank. You see what is in it before anything is added."
        ),
        error_messages={"required": _("Choose a file first."), "empty": _("This file is empty. Choose another.")},
    )

    read: Read

    def __init__(self, *args: Any, grades: set[str], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.grades = grades

    def clean_file(self) -> "UploadedFile[bytes]":
        file: UploadedFile[bytes] = self.cleaned_data["file"]
        if (file.size or 0) > BYTES_LIMIT:
            raise forms.ValidationError(
                gettext("This file is larger than %(most)s MB. Export fewer counts at a time.")
                % {"most": BYTES_LIMIT // 1024 // 1024}
            )
        try:
            self.read = read(file.read(), self.grades)
        except FileError as error:
            raise forms.ValidationError(str(error)) from error
        return file
