"""Addresses of signing in, of one's own account and of the school's people."""

from django.urls import path

from .views import one_time_links, own_account, recovery, school, sign_in

app_name = "accounts"
urlpatterns = [
    path("sign-in/", sign_in.sign_in, name="sign_in"),
    path("sign-out/", sign_in.sign_out, name="sign_out"),
    path("sign-out/everywhere/", sign_in.sign_out_everywhere, name="sign_out_everywhere"),
    path("invitation/<str:token>/", one_time_links.invitation, name="invitation"),
    path("new-passphrase/<str:token>/", one_time_links.new_passphrase, name="new_passphrase"),
    path("recovery/", recovery.recover, name="recover"),
    path("me/", own_account.own_account, name="own_account"),
    path("me/passphrase/", own_account.change_passphrase, name="change_passphrase"),
    path("school/", school.settings, name="school"),
    path("school/people/", school.people, name="people"),
    path("school/people/invite/", school.invite_person, name="invite"),
    path("school/people/<int:pk>/new-passphrase/", school.reset_passphrase, name="reset_passphrase"),
    path("school/people/<int:pk>/role/", school.set_role, name="set_role"),
    path("school/people/<int:pk>/close/", school.close, name="close_account"),
    path("school/people/<int:pk>/reopen/", school.reopen, name="reopen_account"),
    path("school/recovery-code/", recovery.recovery_code, name="recovery_code"),
    path("school/invitations/<int:pk>/withdraw/", school.withdraw_invitation, name="withdraw_invitation"),
]
