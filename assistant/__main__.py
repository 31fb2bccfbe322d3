"""python -m assistant: the lathmark command."""

import sys

from assistant.command import main

sys.exit(main())
