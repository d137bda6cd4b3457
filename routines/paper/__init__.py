"""Paper: the same plan as a page that prints. Rendering runs in a process of its own, so that a booklet never delays a lesson."""
