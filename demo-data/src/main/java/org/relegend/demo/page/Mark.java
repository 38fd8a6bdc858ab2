package org.relegend.demo.page;

import java.util.List;

/**
 * Where something stands on a page.
 *
 * @param kind what of it: its body, one of its sections, the end of a pin, its name's lettering, a
 *     net's label
 * @param subject a part {@code R101}, a section {@code U101/Ta}, a pin {@code R101.1}, a net {@code
 *     net:VP}
 * @param outline round a body or section; else empty
 */
public record Mark(Kind kind, String subject, Dot at, List<Dot> outline) {
  /** What of the subject is marked. */
  public enum Kind {
    BODY,
    SECTION,
    PIN,
    NAME,
    LABEL
  }

  public Mark {
    outline = List.copyOf(outline);
  }
}
