package org.relegend.map;

/**
 * What one entry of a map speaks of: another entry, by its table and key.
 *
 * @param table the table's word, as {@code "parts"}
 * @param key the key as text
 */
public record EntryRef(String table, String key) {
  public static EntryRef to(BoardId board) {
    return new EntryRef("boards", board.text());
  }

  public static EntryRef to(PictureId picture) {
    return new EntryRef("pictures", picture.text());
  }

  public static EntryRef to(PartId part) {
    return new EntryRef("parts", part.text());
  }

  public static EntryRef to(NetId net) {
    return new EntryRef("nets", net.text());
  }

  /** The part, for one of its sections or pins too; the net. */
  public static EntryRef to(Subject subject) {
    if (subject instanceof Subject.OfPart s) {
      return to(s.part());
    }
    if (subject instanceof Subject.OfSection s) {
      return to(s.part());
    }
    if (subject instanceof Subject.OfPin s) {
      return to(s.pin().part());
    }
    return to(((Subject.OfNet) subject).net());
  }

  public static EntryRef toChannel(String channel) {
    return new EntryRef("channels", channel);
  }
}
