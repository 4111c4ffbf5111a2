package lanewarden.audit.press;

/** Words that look the same; a line feed in them ends a line. */
record Run(String text, Lettering letters) {}
