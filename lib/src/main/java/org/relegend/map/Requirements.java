package org.relegend.map;

/** Refuses edits that speak of what a map doesn't have. */
final class Requirements {
  private Requirements() {}

  static Part part(BoardMap map, PartId part) throws EditRefusedException {
    return map.part(part)
        .orElseThrow(
            () -> new EditRefusedException("The map has no part " + part + ": add it first."));
  }

  static Net net(BoardMap map, NetId net) throws EditRefusedException {
    return map.net(net)
        .orElseThrow(() -> new EditRefusedException("The map has no net " + net + "."));
  }

  static Picture picture(BoardMap map, PictureId picture) throws EditRefusedException {
    return map.picture(picture)
        .orElseThrow(
            () ->
                new EditRefusedException("The map has no picture " + picture + ": add it first."));
  }

  static void pin(BoardMap map, PinRef pin) throws EditRefusedException {
    if (part(map, pin.part()).pin(pin.pin()).isEmpty()) {
      throw new EditRefusedException(
          "Part %s has no pin %s.".formatted(map.nameOf(pin.part()), pin.pin()));
    }
  }

  static void subject(BoardMap map, Subject subject) throws EditRefusedException {
    if (subject instanceof Subject.OfPart s) {
      part(map, s.part());
    } else if (subject instanceof Subject.OfSection s) {
      if (part(map, s.part()).section(s.section()).isEmpty()) {
        throw new EditRefusedException(
            "Part %s has no section %s.".formatted(map.nameOf(s.part()), s.section()));
      }
    } else if (subject instanceof Subject.OfPin s) {
      pin(map, s.pin());
    } else if (subject instanceof Subject.OfNet s) {
      net(map, s.net());
    }
  }
}
