package org.relegend.store;

import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.WHOLE_NUMBER;
import static org.relegend.store.Codecs.list;

import org.relegend.map.Clash;

/** The fields of what two people said differently. */
final class ClashShapes {
  private ClashShapes() {}

  static final Codec<Clash> CLASH = clash();
  static final Codec<Clash.Key> KEY = key();

  private static Codec<Clash.Cell> cell() {
    JsonShape<Clash.Cell> s = new JsonShape<>();
    var table = s.required("table", TEXT, Clash.Cell::table);
    var key = s.optional("key", TEXT, "", Clash.Cell::key);
    var field = s.optional("field", TEXT, "", Clash.Cell::field);
    var mine = s.optional("mine", TEXT, "", Clash.Cell::mine);
    var theirs = s.optional("theirs", TEXT, "", Clash.Cell::theirs);
    return s.madeBy(
        v -> new Clash.Cell(v.get(table), v.get(key), v.get(field), v.get(mine), v.get(theirs)));
  }

  private static Codec<Clash> clash() {
    JsonShape<Clash> s = new JsonShape<>();
    var about = s.required("about", TEXT, Clash::about);
    var ordinal = s.optional("ordinal", WHOLE_NUMBER, 1, Clash::ordinal);
    var cells = s.required("cells", list(cell()), Clash::cells);
    return s.madeBy(v -> new Clash(v.get(about), v.get(ordinal), v.get(cells)));
  }

  private static Codec<Clash.Key> key() {
    JsonShape<Clash.Key> s = new JsonShape<>();
    var about = s.required("about", TEXT, Clash.Key::about);
    var ordinal = s.optional("ordinal", WHOLE_NUMBER, 1, Clash.Key::ordinal);
    return s.madeBy(v -> new Clash.Key(v.get(about), v.get(ordinal)));
  }
}
