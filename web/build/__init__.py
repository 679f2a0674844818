"""Sets up, builds and serves the app. Only the standard library of Python 3.11 is needed.

What the tests' runner uses:

* ``web.build.environment.ensure_venv()`` and ``install(lock)``: the project's own Python;
* ``web.build.steps.Steps``: named steps with seconds, skipped when their inputs are unchanged;
* ``web.build.site.build()``: everything up to ``web/dist``;
* ``python3 -m web.build.server``: the local server as a process of its own.
"""
