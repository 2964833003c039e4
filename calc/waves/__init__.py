"""Waves on cables and two-ports: chain matrices, measured files, and the law fitted to a cable's attenuation."""
