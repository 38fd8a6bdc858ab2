package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Picture;
import org.relegend.map.Pin;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.viewer.control.ChannelBadge;
import org.relegend.viewer.control.ChannelOrder;
import org.relegend.viewer.control.DisplayNames;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.paint.Mark;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.session.NodeCard;
import org.relegend.viewer.session.SubjectQueries;

/** One card of the node strip. */
final class NodeCardPanel extends JPanel {
  private static final int CUT = 84;
  private static final int GAP = 6;

  private final Overlays scene;
  private final NodeCard card;
  private final JPanel cuts = new JPanel(new GridLayout(1, 0, GAP, 0));
  private final List<Picture> closeUps;
  private boolean filled;
  private boolean current;

  NodeCardPanel(Overlays scene, NodeCard card) {
    super(new BorderLayout(0, 4));
    this.scene = scene;
    this.card = card;
    closeUps = scene.closeUps(card.subject());
    add(head(), BorderLayout.NORTH);
    cuts.setOpaque(false);
    int count = 3 + (ofUnit() ? 1 : 0);
    cuts.setPreferredSize(new Dimension(count * (CUT + GAP) - GAP, CUT + 18));
    add(cuts, BorderLayout.CENTER);
    add(foot(), BorderLayout.SOUTH);
    setCurrent(false);
    getAccessibleContext().setAccessibleName(spoken());
  }

  NodeCard card() {
    return card;
  }

  /** Whether it is the one walked to: told by a thick frame and by the ground. */
  void setCurrent(boolean current) {
    this.current = current;
    dress();
  }

  private void dress() {
    Color frame = UIManager.getColor(current ? "Component.focusColor" : "Component.borderColor");
    int thick = current ? 3 : 1;
    setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(frame, thick, true),
            BorderFactory.createEmptyBorder(8 - thick, 10 - thick, 8 - thick, 10 - thick)));
    setBackground(UIManager.getColor(current ? "TextField.background" : "Panel.background"));
    repaint();
  }

  /** As wide as its pictures need, however much room there is. */
  @Override
  public Dimension getMaximumSize() {
    return new Dimension(getPreferredSize().width, Integer.MAX_VALUE);
  }

  /** Takes up a new look-and-feel's colours. */
  @Override
  public void updateUI() {
    super.updateUI();
    if (card != null) {
      dress();
    }
  }

  /** Opens the pictures of the card; done when it first comes into view, as there may be many. */
  void fill() {
    if (filled) {
      return;
    }
    filled = true;
    String notHere = Messages.of("card.nothere");
    cuts.add(cut(card.page(), Messages.of("card.page"), notHere, Mark.Emphasis.SELECTED));
    boolean own = card.photo().filter(place -> scene.isOfUnit(place.picture())).isPresent();
    String photo = Messages.of(own ? "card.unit" : "card.photo");
    cuts.add(cut(card.photo(), photo, notHere, Mark.Emphasis.SELECTED));
    if (!closeUps.isEmpty()) {
      cuts.add(CutOutPanel.whole(scene, closeUps.get(0), Messages.of("card.closeup"), CUT));
    } else if (ofUnit()) {
      cuts.add(cut(card.unit(), Messages.of("card.unit"), notHere, Mark.Emphasis.SELECTED));
    }
    String key = card.follows().isPresent() ? "card.twin.follows" : "card.twin";
    String twin = card.twin().map(other -> Messages.of(key, name(other))).orElse(" ");
    String known = card.held() ? Messages.of("card.held") : notHere;
    String none = card.twin().isPresent() ? known : Messages.of("card.notwin");
    cuts.add(cut(card.twinPhoto(), twin, none, Mark.Emphasis.TWIN));
    cuts.revalidate();
  }

  /** Whether this unit's own photos show it: a close-up, or else one of the side. */
  private boolean ofUnit() {
    return card.unit().isPresent() || !closeUps.isEmpty();
  }

  private JComponent cut(
      Optional<Placement> place, String word, String none, Mark.Emphasis emphasis) {
    return place
        .map(found -> CutOutPanel.of(scene, found, word, emphasis, CUT))
        .orElseGet(() -> CutOutPanel.empty(none, word, CUT));
  }

  private JComponent head() {
    JPanel head = new JPanel(new BorderLayout(8, 0));
    head.setOpaque(false);
    ChannelBadge badge = new ChannelBadge(22);
    String channel = channel();
    badge.show(channel, placeOf(channel));
    if (!channel.isEmpty()) {
      head.add(badge, BorderLayout.WEST);
    }
    JLabel name = new JLabel(title());
    name.putClientProperty("FlatLaf.styleClass", "h3");
    head.add(name, BorderLayout.CENTER);
    JLabel value = new JLabel(value());
    value.putClientProperty("FlatLaf.styleClass", "h4");
    head.add(value, BorderLayout.EAST);
    return head;
  }

  private JComponent foot() {
    JPanel foot = new JPanel();
    foot.setOpaque(false);
    foot.setLayout(new BoxLayout(foot, BoxLayout.Y_AXIS));
    for (String line : lines()) {
      JLabel label = new JLabel(line);
      label.setAlignmentX(Component.LEFT_ALIGNMENT);
      foot.add(label);
    }
    if (!card.zones().isEmpty()) {
      foot.add(Box.createVerticalStrut(4));
      foot.add(new HazardTag(hazards()));
    }
    return foot;
  }

  private String name(Subject subject) {
    return map().nameOf(subject);
  }

  private BoardMap map() {
    return scene.map();
  }

  private Optional<Part> part() {
    return SubjectQueries.partOf(card.subject()).flatMap(map()::part);
  }

  private String title() {
    if (card.subject() instanceof Subject.OfPin ref) {
      String role = part().flatMap(found -> found.pin(ref.pin().pin())).map(Pin::role).orElse("");
      return name(card.subject()) + (role.isEmpty() ? "" : "  " + role);
    }
    return name(card.subject());
  }

  private String value() {
    if (card.subject() instanceof Subject.OfNet net) {
      int pins = map().net(net.net()).map(found -> found.members().size()).orElse(0);
      return Messages.of("card.net", pins);
    }
    String value = part().map(Part::value).orElse("");
    String kind = part().map(Part::kind).orElse("");
    return value.isEmpty() ? (kind.isEmpty() ? Messages.of("card.value.unknown") : kind) : value;
  }

  private String channel() {
    return part().map(Part::channel).or(() -> net().map(Net::channel)).orElse("");
  }

  private Optional<Net> net() {
    return card.subject() instanceof Subject.OfNet net ? map().net(net.net()) : Optional.empty();
  }

  private int placeOf(String channel) {
    return ChannelOrder.of(map()).indexOf(channel);
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    String joined = card.joined().map(found -> Messages.of("card.joined", word(found))).orElse("");
    String placed = card.photo().or(card::page).map(this::placed).orElse("");
    lines.add(
        List.of(joined, placed).stream()
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" \u00b7 ")));
    Optional<String> condition = scene.condition(card.subject());
    condition.ifPresent(known -> lines.add(Messages.of("card.condition", known)));
    card.follows().ifPresent(from -> lines.add(DisplayNames.follows(map(), from)));
    boolean unknown = condition.isEmpty() && card.follows().isEmpty();
    if (unknown && !(card.subject() instanceof Subject.OfNet)) {
      lines.add(Messages.of("card.condition.unknown"));
    }
    lines.removeIf(String::isEmpty);
    return lines;
  }

  private String placed(Placement place) {
    return scene
        .carried(place)
        .map(
            carried ->
                Messages.of(
                    "card.carried",
                    scene.map().picture(carried.source().picture()).orElseThrow().caption(),
                    Math.max(1, Math.round(carried.radius95()))))
        .orElseGet(() -> Messages.of("card.placed", word(place.best())));
  }

  private static String word(Evidence evidence) {
    return Messages.of("act." + Messages.word(evidence)).toLowerCase(java.util.Locale.getDefault());
  }

  private String hazards() {
    return card.zones().stream()
        .map(HazardZone::kind)
        .distinct()
        .map(kind -> Messages.of("hazard." + Messages.word(kind)))
        .collect(Collectors.joining(", "));
  }

  private String spoken() {
    return Messages.of(
        "card.accessible",
        title(),
        value(),
        String.join(". ", lines()) + (card.zones().isEmpty() ? "" : ". " + hazards()));
  }

  /** Yellow with black writing and stripes, and a word: never colour alone. */
  private static final class HazardTag extends JLabel {
    HazardTag(String text) {
      super("\u26a0 " + text.toUpperCase(java.util.Locale.getDefault()));
      setOpaque(true);
      setBackground(Palette.WARNING_YELLOW);
      setForeground(Palette.WARNING_BLACK);
      setBorder(
          BorderFactory.createCompoundBorder(
              BorderFactory.createLineBorder(Palette.WARNING_BLACK, 2),
              BorderFactory.createEmptyBorder(1, 6, 1, 6)));
      setAlignmentX(Component.LEFT_ALIGNMENT);
      putClientProperty("FlatLaf.styleClass", "h4");
    }
  }
}
