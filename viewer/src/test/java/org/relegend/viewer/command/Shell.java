package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs commands as a shell would, and keeps what they print. */
final class Shell {
  /** What one run gave. */
  record Run(int code, String out, String err) {}

  final List<Optional<Path>> opened = new ArrayList<>();

  Run run(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<String> words = new ArrayList<>();
    for (Object argument : arguments) {
      words.add(argument.toString());
    }
    int code = Commands.run(words, new PrintWriter(out), new PrintWriter(err), this::open);
    return new Run(code, out.toString(), err.toString());
  }

  private int open(Optional<Path> folder) {
    opened.add(folder);
    return 0;
  }
}
