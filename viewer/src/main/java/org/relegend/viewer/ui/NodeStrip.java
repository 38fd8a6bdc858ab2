package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.viewer.control.ChannelBadge;
import org.relegend.viewer.control.ChannelOrder;
import org.relegend.viewer.control.KeyText;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.QuestionBar;
import org.relegend.viewer.session.CardStrip;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/** All that is joined at the chosen node, one card each, from left to right. */
final class NodeStrip extends JPanel {
  private static final String NAMED = "named";
  private static final String ASKED = "asked";

  private final Session session;
  private final Overlays scene;
  private final ChannelBadge badge = new ChannelBadge(34);
  private final JLabel title = new JLabel();
  private final JLabel detail = new JLabel();
  private final JPanel head = new JPanel(new CardLayout());
  private final JPanel row = new JPanel();
  private final JScrollPane scroll =
      new JScrollPane(
          row,
          ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
          ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
  private final List<NodeCardPanel> cards = new ArrayList<>();
  private Mode laidFor;

  /**
   * @param question takes the place of the heading while something is asked
   */
  NodeStrip(Session session, Overlays scene, QuestionBar question) {
    super(new BorderLayout(0, 4));
    this.session = session;
    this.scene = scene;
    laidFor = session.mode();
    setFocusable(true);
    setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 10));
    title.putClientProperty("FlatLaf.styleClass", "h2");
    JPanel named = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 0));
    named.add(badge);
    named.add(title);
    named.add(detail);
    head.add(named, NAMED);
    head.add(question, ASKED);
    add(head, BorderLayout.NORTH);
    row.setLayout(new BoxLayout(row, BoxLayout.X_AXIS));
    scroll.setBorder(BorderFactory.createEmptyBorder());
    KeyText.freeIn(scroll);
    scroll.getHorizontalScrollBar().setUnitIncrement(40);
    scroll.getViewport().addChangeListener(moved -> fillVisible());
    add(scroll, BorderLayout.CENTER);
    getAccessibleContext().setAccessibleName(Messages.of("strip.area"));
    lay();
  }

  /** Lays the cards of what is chosen now. */
  void lay() {
    cards.clear();
    row.removeAll();
    CardStrip strip = session.selection().strip();
    strip.groups().forEach(group -> row.add(column(strip, group)));
    if (cards.isEmpty()) {
      row.add(nothing());
    }
    showHead(strip);
    showCursor();
    row.revalidate();
    row.repaint();
    SwingUtilities.invokeLater(this::fillVisible);
  }

  /** Shows the question in the place of the heading, or the heading again. */
  void showQuestion(boolean asked) {
    ((CardLayout) head.getLayout()).show(head, asked ? ASKED : NAMED);
  }

  /** What to click now, by the tool in hand, lies there while nothing is chosen. */
  void followTool() {
    if (cards.isEmpty() && !session.mode().equals(laidFor)) {
      lay();
    }
  }

  private JComponent nothing() {
    laidFor = session.mode();
    JLabel text =
        new JLabel(
            laidFor
                .prompt()
                .map(prompt -> Messages.of("notice." + Messages.word(prompt)))
                .orElseGet(() -> Messages.of("strip.empty.text")));
    text.setName("strip-empty");
    text.setBorder(BorderFactory.createEmptyBorder(30, 4, 30, 4));
    return text;
  }

  private JComponent column(CardStrip strip, CardStrip.Group group) {
    JPanel column = new JPanel(new BorderLayout(0, 4));
    column.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 14));
    if (strip.groups().size() > 1) {
      JLabel heading = new JLabel(heading(group));
      heading.putClientProperty("FlatLaf.styleClass", "h4");
      column.add(heading, BorderLayout.NORTH);
    }
    JPanel views = new JPanel();
    views.setLayout(new BoxLayout(views, BoxLayout.X_AXIS));
    group
        .cards()
        .forEach(
            card -> {
              NodeCardPanel view = new NodeCardPanel(scene, card);
              int place = cards.size();
              view.addMouseListener(new Walker(place));
              cards.add(view);
              views.add(view);
              views.add(javax.swing.Box.createHorizontalStrut(8));
            });
    column.add(views, BorderLayout.CENTER);
    column.setAlignmentY(Component.TOP_ALIGNMENT);
    column.setMaximumSize(new Dimension(column.getPreferredSize().width, Integer.MAX_VALUE));
    return column;
  }

  private String heading(CardStrip.Group group) {
    Optional<String> net = group.net().map(this::name);
    if (net.isEmpty()) {
      return Messages.of("strip.part");
    }
    return group
        .via()
        .map(via -> Messages.of("strip.via", via.pin(), net.get(), group.pins()))
        .orElseGet(() -> Messages.of("strip.net", net.get(), group.pins()));
  }

  private String name(NetId net) {
    return session.map().nameOf(Subject.of(net));
  }

  private void showHead(CardStrip strip) {
    Optional<Subject> subject = strip.subject();
    String channel = subject.map(this::channel).orElse("");
    badge.setVisible(!channel.isEmpty());
    badge.show(channel, ChannelOrder.of(session.map()).indexOf(channel));
    title.setText(subject.map(this::headline).orElse(Messages.of("strip.empty.title")));
    detail.setText(subject.map(this::detail).orElse(""));
  }

  private String headline(Subject subject) {
    String name = session.map().nameOf(subject);
    return session.mode().heading(subject).map(key -> Messages.of(key, name)).orElse(name);
  }

  /** In words beside the name: the node of a pin; value and kind of a part; what is drawn. */
  private String detail(Subject subject) {
    List<String> words = new ArrayList<>();
    String channel = channel(subject);
    if (!channel.isEmpty()) {
      words.add(Messages.of("channel.name", channel));
      session
          .map()
          .channels()
          .find(channel)
          .map(Channel::panel)
          .filter(panel -> !panel.isEmpty() && !words.contains(panel))
          .ifPresent(panel -> words.add(Messages.of("channel.panel", panel)));
    }
    BoardMap map = session.map();
    SubjectQueries.partOf(subject)
        .flatMap(map::part)
        .ifPresent(part -> List.of(part.value(), part.kind()).forEach(words::add));
    CardStrip strip = session.selection().strip();
    boolean node = !(subject instanceof Subject.OfPart);
    if (node) {
      strip.groups().forEach(group -> words.add(nodeWords(group)));
    }
    if (subject instanceof Subject.OfPin pin) {
      session
          .document()
          .index()
          .drawnOtherwise(pin.pin())
          .ifPresent(drawn -> words.add(Messages.of("strip.drawn", drawnNet(drawn))));
    }
    words.removeIf(String::isEmpty);
    return String.join("  \u00b7  ", words);
  }

  private String nodeWords(CardStrip.Group group) {
    return group
        .net()
        .map(net -> Messages.of("strip.net", name(net), group.pins()))
        .orElseGet(() -> Messages.of("strip.alone"));
  }

  private String drawnNet(DrawingDiscrepancy drawn) {
    return drawn.drawn().isEmpty() ? "\u2013" : name(new NetId(drawn.drawn()));
  }

  private String channel(Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      return session.map().net(net.net()).map(Net::channel).orElse("");
    }
    return SubjectQueries.partOf(subject)
        .flatMap(session.map()::part)
        .map(Part::channel)
        .orElse("");
  }

  /** Shows which card is walked to, and scrolls it into view. */
  void showCursor() {
    Selection selection = session.selection();
    for (int i = 0; i < cards.size(); i++) {
      cards.get(i).setCurrent(i == selection.cursor());
    }
    if (selection.cursor() < cards.size()) {
      NodeCardPanel current = cards.get(selection.cursor());
      SwingUtilities.invokeLater(
          () -> current.scrollRectToVisible(new Rectangle(current.getSize())));
      getAccessibleContext()
          .setAccessibleDescription(current.getAccessibleContext().getAccessibleName());
    }
  }

  private void fillVisible() {
    for (NodeCardPanel card : cards) {
      Rectangle there = SwingUtilities.convertRectangle(card.getParent(), card.getBounds(), row);
      if (scroll.getViewport().getViewRect().intersects(there)) {
        card.fill();
      }
    }
  }

  @Override
  public javax.accessibility.AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJPanel() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.LIST;
            }
          };
    }
    return accessibleContext;
  }

  /** A click walks to the card, a double click opens it. */
  private final class Walker extends MouseAdapter {
    private final int card;

    Walker(int card) {
      this.card = card;
    }

    @Override
    public void mousePressed(MouseEvent event) {
      requestFocusInWindow();
      session.walk().to(card);
      if (event.getClickCount() == 2) {
        session.walk().open();
      }
    }
  }
}
