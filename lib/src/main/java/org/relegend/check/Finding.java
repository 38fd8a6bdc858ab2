package org.relegend.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.relegend.map.Edit;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/**
 * One result of a check.
 *
 * @param code of the check; never used for anything else, in any version
 * @param subjects what it is about, the most important first; empty where that is no part, pin or
 *     net
 * @param picture the picture it is about, if any
 * @param message what was found, in the technician's words
 * @param remedy what to do about it
 * @param fix an edit that mends it, where one is obvious
 */
public record Finding(
    String code,
    Severity severity,
    List<Subject> subjects,
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

  public Finding(
      String code, Severity severity, List<Subject> subjects, String message, String remedy) {
    this(code, severity, subjects, Optional.empty(), message, remedy, Optional.empty());
  }

  Finding on(PictureId shown) {
    return new Finding(code, severity, subjects, Optional.of(shown), message, remedy, fix);
  }

  Finding fixedBy(Edit edit) {
    return new Finding(code, severity, subjects, picture, message, remedy, Optional.of(edit));
  }

  /** What a person silences it by: the same as long as it is about the same things. */
  public String key() {
    return code
        + picture.map(p -> " on " + p).orElse("")
        + subjects.stream().map(subject -> " " + subject).collect(Collectors.joining());
  }
}
