package org.relegend.map;

/** What something is said of: a part, one section of a part, a pin or a net. */
public sealed interface Subject extends Comparable<Subject> {
  record OfPart(PartId part) implements Subject {
    @Override
    public String toString() {
      return part.text();
    }
  }

  record OfSection(PartId part, String section) implements Subject {
    public OfSection {
      NameRules.checked("section name", section);
    }

    @Override
    public String toString() {
      return part + "/" + section;
    }
  }

  record OfPin(PinRef pin) implements Subject {
    @Override
    public String toString() {
      return pin.toString();
    }
  }

  record OfNet(NetId net) implements Subject {
    @Override
    public String toString() {
      return "net:" + net;
    }
  }

  static Subject of(PartId part) {
    return new OfPart(part);
  }

  static Subject of(PinRef pin) {
    return new OfPin(pin);
  }

  static Subject of(NetId net) {
    return new OfNet(net);
  }

  /**
   * Reads what {@code toString} writes: R101, U101/Ta, R101.1, net:A_ATT. No part id has a slash, a
   * dot or a colon, so each text has one reading.
   *
   * @throws IllegalArgumentException where the text is none of these
   */
  static Subject parse(String text) {
    if (text.startsWith("net:")) {
      return new OfNet(new NetId(text.substring(4)));
    }
    int slash = text.indexOf('/');
    int dot = text.indexOf('.');
    if (slash > 0 && (dot < 0 || slash < dot)) {
      return new OfSection(new PartId(text.substring(0, slash)), text.substring(slash + 1));
    }
    return dot > 0 ? new OfPin(PinRef.parse(text)) : new OfPart(new PartId(text));
  }

  @Override
  default int compareTo(Subject other) {
    return NameRules.NATURAL.compare(toString(), other.toString());
  }
}
