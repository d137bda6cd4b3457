"""Static files under hashed names, imports between our own scripts included."""

from whitenoise.storage import CompressedManifestStaticFilesStorage

_ANY_SCRIPT, _IMPORTS = CompressedManifestStaticFilesStorage._js_module_import_aggregation_patterns


class StaticFiles(CompressedManifestStaticFilesStorage):  # type: ignore[misc]  # whitenoise declares no types
    """Rewrites `import ... from "./part.js"` to the hashed name, so that modules need no build step.

    Only in our modules: packages bring scripts whose imports name things that are not served. A test collects all files.
    """

    support_js_module_import_aggregation = True
    _js_module_import_aggregation_patterns = ("js/lesson/*.js", _IMPORTS)
    # A module's hash settles one pass after those that it imports.
    max_post_process_passes = 10
