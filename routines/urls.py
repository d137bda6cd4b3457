"""Addresses of the bank, plans, coverage and paper; lessons have theirs."""

from django.urls import include, path

from routines.views import bank, booklet, coverage, erase_words, exchange, paper, plan, routine

urlpatterns = [
    path("", bank.bank, name="bank"),
    # One routine
    path("routines/<int:pk>/", routine.routine, name="routine"),
    path("routines/<int:pk>/copy/", routine.copy, name="routine_copy"),
    path("routines/<int:pk>/share/", routine.share, name="routine_share"),
    path("routines/<int:pk>/retire/", routine.retire, name="routine_retire"),
    path("routines/<int:pk>/notes/", routine.add_note, name="routine_note"),
    path("routines/<int:pk>/compare/", routine.compare, name="routine_compare"),
    path("routines/<int:pk>/co-authors/", routine.co_authors, name="routine_co_authors"),
    # plan
    path("plans/", plan.my_plans, name="my_plans"),
    path("plans/new/", plan.new, name="plan_new"),
    path("plans/new/<uuid:key>/preview/", plan.preview, name="plan_preview"),
    path("plans/new/<uuid:key>/", plan.edit, name="plan_edit"),
    path("plans/new/<uuid:key>/draft/", plan.draft, name="plan_draft"),
    path("plans/new/<uuid:key>/drop/", plan.drop_draft, name="plan_drop"),
    path("plans/new/<uuid:key>/change/", plan.change, name="plan_change"),
    path("plans/new/<uuid:key>/part/<slug:name>/", plan.part, name="plan_part"),
    path("routines/<int:pk>/edit/", plan.edit, name="plan_edit"),
    path("routines/<int:pk>/edit/part/<slug:name>/", plan.part, name="plan_part"),
    path("routines/<int:pk>/edit/preview/", plan.preview, name="plan_preview"),
    path("routines/<int:pk>/edit/draft/", plan.draft, name="plan_draft"),
    path("routines/<int:pk>/edit/drop/", plan.drop_draft, name="plan_drop"),
    path("routines/<int:pk>/edit/change/", plan.change, name="plan_change"),
    path("routines/<int:pk>/edit/merge/", plan.merge, name="plan_merge"),
    path("routines/<int:pk>/edit/history/", plan.history, name="plan_history"),
    path("routines/<int:pk>/edit/restore/", plan.restore, name="plan_restore"),
    path("", include("routines.lessons.urls")),
    # coverage
    path("coverage/", coverage.coverage_page, name="coverage"),
    path("coverage/<int:grade>/<slug:area>/", coverage.cell, name="coverage_cell"),
    path("remove-words/", erase_words.erase_words, name="erase_words"),
    # paper
    path("routines/<int:pk>/print/", paper.print_page, name="print"),
    path("routines/<int:pk>/print/<slug:name>/", paper.print_html, name="print_html"),
    path("routines/<int:pk>/print/<slug:name>.pdf", paper.print_pdf, name="print_pdf"),
    path("routines/<int:pk>/plan.pdf", paper.plan_pdf, name="plan_pdf"),
    path("booklet/", booklet.booklet_choose, name="booklet_choose"),
    path("booklet/<uuid:key>/", booklet.booklet, name="booklet"),
    path("booklet/<uuid:key>/drop/", booklet.booklet_drop, name="booklet_drop"),
    path("booklet/<uuid:key>/booklet.pdf", booklet.booklet_pdf, name="booklet_pdf"),
    # files
    path("routines/<int:pk>/file.json", exchange.export_routine, name="export_routine"),
    path("routines/<int:pk>/grid.csv", exchange.export_grid, name="export_grid"),
    path("bank.json", exchange.export_bank, name="export_bank"),
    path("import/", exchange.import_file, name="import"),
    path("import/<uuid:key>/", exchange.import_look, name="import_look"),
    path("import/<uuid:key>/add/", exchange.import_add, name="import_add"),
    path("import/<uuid:key>/progress/", exchange.import_progress, name="import_progress"),
    path("import/<uuid:key>/stop/", exchange.import_stop, name="import_stop"),
    path("file-format.json", exchange.file_schema, name="file_schema"),
]
