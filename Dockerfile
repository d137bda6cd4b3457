# The server of compose.yaml. The packages are those that README.md and .ci/run name for prints.
FROM python:3.13-slim
RUN apt-get update \
    && apt-get install -y --no-install-recommends libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0 \
    && rm -rf /var/lib/apt/lists/*
RUN useradd --create-home countfold && mkdir /countfold /data && chown countfold /countfold /data
USER countfold
WORKDIR /countfold
COPY --chown=countfold . .
RUN python3 -c "from config.virtual_environment import prepare; prepare(('requirements.txt',))"
CMD ["python3", "run.py", "serve", "--lan"]
