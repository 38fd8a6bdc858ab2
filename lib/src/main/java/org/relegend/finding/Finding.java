package org.relegend.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.map.Edit;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/**
 * One result of a check of the map, or of a rule of readings.
 *
 * @param code of the check or rule; never used for anything else, in any version
 * @param subjects what it is about, the most important first; empty where that is no part, pin or
 *     net
 * @param about what else it is about: the name of a board, a channel or a zone; else empty
 * @param picture the picture it is about, if any
 * @param message what was found, in the technician's words
 * @param remedy what to do about it
 * @param fix an edit that mends it, where one is obvious
 */
public record Finding(
    String code,
    Severity severity,
    List<Subject> subjects,
    String about,
    Optional<PictureId> picture,
    String message,
    String remedy,
    Optional<Edit> fix) {
  public Finding {
    subjects = List.copyOf(subjects);
    if (message.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException(
          "a finding of %s without a message or a remedy".formatted(code));
    }
  }

  /** A finding about subjects alone, without a fix. */
  public Finding(
      String code, Severity severity, List<Subject> subjects, String message, String remedy) {
    this(code, severity, subjects, "", Optional.empty(), message, remedy, Optional.empty());
  }

  /** The same about a board, a channel or a zone of this name. */
  public Finding about(String name) {
    return new Finding(code, severity, subjects, name, picture, message, remedy, fix);
  }

  /** The same on a picture. */
  public Finding on(PictureId shown) {
    return new Finding(code, severity, subjects, about, Optional.of(shown), message, remedy, fix);
  }

  /** The same with an edit that mends it. */
  public Finding fixedBy(Edit edit) {
    return new Finding(
        code, severity, subjects, about, picture, message, remedy, Optional.of(edit));
  }

  /**
   * What a person silences it by: the same as long as it is about the same things. Where it is
   * about a board, a channel or a zone, that counts, and not how many parts there are of it by now.
   */
  public String key() {
    String rest =
        about.isEmpty()
            ? subjects.stream().map(Subject::toString).collect(Collectors.joining(" "))
            : about;
    return String.join(" ", code, picture.map(PictureId::text).orElse("-"), rest);
  }
}
