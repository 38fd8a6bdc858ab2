package org.relegend.share;

import java.util.ArrayList;
import java.util.List;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.store.Json;
import org.relegend.store.TableCodec;

/** Which nets a pin is on, as a version in a clash: a list of nets, each with the evidence. */
final class PinCells {
  /** The name that stands in clashes for what pins are on; it is no table of the file. */
  static final String TABLE = "pins";

  private PinCells() {}

  /** A pin's place on a net. */
  record On(NetId net, Net.Member member) {}

  /** As text; empty where the pin is on no net. */
  static String text(List<On> nets) {
    if (nets.isEmpty()) {
      return "";
    }
    return Json.array(
            nets,
            on -> {
              Json.Obj net =
                  TableCodec.of(MapTables.NETS).json(Net.named(on.net()).withMember(on.member()));
              Json evidence =
                  ((Json.Obj) FieldMerge.entries(net.fields().get("members")).get(0))
                      .fields()
                      .getOrDefault("evidence", Json.array(List.of()));
              return Json.object().put("net", on.net().text()).put("evidence", evidence);
            })
        .compact();
  }

  /**
   * Reads what {@link #text} writes.
   *
   * @throws IllegalArgumentException where the text is none
   */
  static List<On> parse(PinRef pin, String text) {
    List<On> nets = new ArrayList<>();
    if (text.isEmpty()) {
      return nets;
    }
    if (!(Json.parse(text) instanceof Json.Arr list)) {
      throw new IllegalArgumentException("a list of nets must stand for what a pin is on");
    }
    for (Json entry : list.values()) {
      if (!(entry instanceof Json.Obj on)
          || !(on.fields().get("net") instanceof Json.Text net)
          || !(on.fields().get("evidence") instanceof Json.Arr evidence)) {
        throw new IllegalArgumentException(
            "a net and its evidence must stand for what a pin is on");
      }
      Json member = Json.object().put("pin", pin.toString()).put("evidence", evidence);
      Net whole =
          TableCodec.of(MapTables.NETS)
              .entry(
                  Json.object()
                      .put("id", net.value())
                      .put("name", net.value())
                      .put("members", List.of(member)));
      nets.add(new On(whole.id(), whole.members().get(0)));
    }
    return nets;
  }
}
