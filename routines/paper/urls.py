"""Addresses of prints and booklets."""

from django.urls import path

from routines.paper.views import booklets, prints

urlpatterns = [
    path("routines/<int:pk>/print/", prints.print_page, name="print"),
    path("routines/<int:pk>/print/<slug:name>/", prints.print_html, name="print_html"),
    path("routines/<int:pk>/print/<slug:name>.pdf", prints.print_pdf, name="print_pdf"),
    path("routines/<int:pk>/plan.pdf", prints.plan_pdf, name="plan_pdf"),
    path("booklet/", booklets.booklet_choose, name="booklet_choose"),
    path("booklet/<uuid:key>/", booklets.booklet, name="booklet"),
    path("booklet/<uuid:key>/drop/", booklets.booklet_drop, name="booklet_drop"),
    path("booklet/<uuid:key>/booklet.pdf", booklets.booklet_pdf, name="booklet_pdf"),
]
