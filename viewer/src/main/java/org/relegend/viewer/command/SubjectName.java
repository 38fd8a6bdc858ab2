package org.relegend.viewer.command;

import java.util.List;
import java.util.stream.Collectors;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.NodeName;
import org.relegend.circuit.NodeNameException;
import org.relegend.circuit.NodeNames;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Finds what a person means by R101, U102/X, U102.7 or a net's name. */
record SubjectName(Circuit circuit) {
  Subject find(String text) throws CommandFailure {
    int slash = text.indexOf('/');
    if (slash > 0 && !parts(text.substring(0, slash)).isEmpty()) {
      return section(one(text.substring(0, slash)), text.substring(slash + 1));
    }
    if (!parts(text).isEmpty()) {
      return Subject.of(one(text).id());
    }
    try {
      NodeName name = new NodeNames(circuit).find(text);
      if (name instanceof NodeName.OfNet net) {
        return Subject.of(net.net());
      }
      if (name instanceof NodeName.OfPin pin) {
        return Subject.of(pin.pin());
      }
      throw new CommandFailure(
          "only the drawing has \"%s\"; the board has no such net".formatted(text));
    } catch (NodeNameException unknown) {
      int dot = text.indexOf('.');
      if (dot > 0
          && parts(text.substring(0, dot)).stream()
              .anyMatch(part -> part.section(text.substring(dot + 1)).isPresent())) {
        throw new CommandFailure(
            "\"%s\" is no pin, but a section: write %s"
                .formatted(text, text.replaceFirst("\\.", "/")));
      }
      throw new CommandFailure(String.valueOf(unknown.getMessage()));
    }
  }

  private Subject section(Part part, String section) throws CommandFailure {
    if (part.section(section).isEmpty()) {
      throw new CommandFailure(
          part.sections().isEmpty()
              ? "part %s has no sections".formatted(part.designator())
              : "part %s has no section \"%s\": its sections are %s"
                  .formatted(
                      part.designator(),
                      section,
                      part.sections().stream()
                          .map(known -> known.name())
                          .collect(Collectors.joining(", "))));
    }
    return new Subject.OfSection(part.id(), section);
  }

  private Part one(String designator) throws CommandFailure {
    List<Part> parts = parts(designator);
    if (parts.size() > 1) {
      throw new CommandFailure(
          "%d parts are called %s: ask by id, one of %s"
              .formatted(
                  parts.size(),
                  designator,
                  parts.stream().map(part -> part.id().text()).collect(Collectors.joining(", "))));
    }
    return parts.get(0);
  }

  private List<Part> parts(String word) {
    try {
      List<Part> named = circuit.index().partsNamed(new Designator(word));
      List<Part> byId =
          circuit.map().parts().stream().filter(p -> p.id().text().equals(word)).toList();
      return named.isEmpty() ? byId : named.size() > 1 && !byId.isEmpty() ? byId : named;
    } catch (IllegalArgumentException noDesignator) {
      return List.of();
    }
  }
}
