"""The chain of cables, joints and parts between transmitter and antenna, solved exactly."""
