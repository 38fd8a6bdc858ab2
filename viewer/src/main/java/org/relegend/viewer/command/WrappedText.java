package org.relegend.viewer.command;

import java.io.PrintWriter;

/** Text in lines of a readable length. */
final class WrappedText {
  private WrappedText() {}

  /** Breaks between words; what runs on is indented by two more than the first line. */
  static void print(PrintWriter out, String text, int width) {
    int indent = text.length() - text.stripLeading().length();
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    boolean begun = false;
    for (String word : text.strip().split(" ", -1)) {
      if (begun && line.length() + 1 + word.length() > width) {
        out.println(line);
        line = new StringBuilder(" ".repeat(indent + 2)).append(word);
      } else {
        line.append(begun ? " " : "").append(word);
      }
      begun = true;
    }
    out.println(line);
  }
}
