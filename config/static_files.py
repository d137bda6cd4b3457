"""Static files under hashed names, imports between scripts included."""

from whitenoise.storage import CompressedManifestStaticFilesStorage


class StaticFiles(CompressedManifestStaticFilesStorage):
    """Rewrites `import ... from "./part.js"` to the hashed name, so that modules need no build step."""

    support_js_module_import_aggregation = True
    # A module's hash settles one pass after those that it imports.
    max_post_process_passes = 10
