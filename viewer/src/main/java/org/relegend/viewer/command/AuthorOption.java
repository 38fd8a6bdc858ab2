package org.relegend.viewer.command;

import java.time.Clock;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import picocli.CommandLine.Option;

/** Who stands for what a command writes into a map. */
final class AuthorOption {
  /** The environment variable that names the author where the option doesn't. */
  static final String VARIABLE = "RELEGEND_AUTHOR";

  @Option(
      names = "--author",
      paramLabel = "ALIAS",
      description =
          "who stands for what is written; goes wherever the map goes (or set $" + VARIABLE + ")")
  private String author = "";

  String author() {
    String fromShell = System.getenv(VARIABLE);
    return !author.isEmpty() || fromShell == null ? author : fromShell.strip();
  }

  Attestation attestation(Evidence evidence) {
    return new Attestation(evidence, author(), Clock.systemUTC().instant());
  }
}
