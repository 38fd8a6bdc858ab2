package org.relegend.viewer.ui;

import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.relegend.hazard.Caution;
import org.relegend.hazard.Cautions;
import org.relegend.map.HazardZone;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.paint.Palette;

/**
 * The caution before a place inside a hazard zone is shown: it must be read, or one goes back. The
 * text has the keyboard, and neither Enter nor a letter that was typed for something else says that
 * it was read: that takes Ctrl+Enter, the pointer, or Enter on the button one went to.
 */
final class CautionDialog extends JDialog {
  private static final int WIDE = 520;
  private static final int HIGH = 440;

  private final JButton done =
      new JButton(Messages.of("caution.read") + "  " + Messages.of("caution.read.key"));
  private boolean read;

  private CautionDialog(Window owner, String name, String title, JComponent words, boolean back) {
    super(owner, title, ModalityType.DOCUMENT_MODAL);
    setName(name);
    words.setFocusable(true);
    JPanel content = new JPanel(new BorderLayout());
    content.add(new Band(), BorderLayout.NORTH);
    content.add(words, BorderLayout.CENTER);
    content.add(buttons(back), BorderLayout.SOUTH);
    setContentPane(content);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    pack();
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            words.requestFocusInWindow();
          }
        });
    setResizable(false);
    setLocationRelativeTo(owner);
  }

  /**
   * Shows the caution of these zones; tells whether it was read.
   *
   * @param nameOf what people call a zone
   */
  static boolean show(Window owner, List<HazardZone> zones, Function<HazardZone, String> nameOf) {
    CautionDialog dialog =
        new CautionDialog(
            owner, "caution", Messages.of("caution.title"), words(zones, nameOf), true);
    dialog.getAccessibleContext().setAccessibleDescription(headings(zones));
    dialog.setVisible(true);
    return dialog.read;
  }

  /** What stands before the first look at a map with mains; tells whether it was read. */
  static boolean showFirst(Window owner) {
    CautionDialog dialog =
        new CautionDialog(owner, "first-caution", Messages.of("caution.first"), allWords(), false);
    dialog.setVisible(true);
    return dialog.read;
  }

  /** All cautions, for reading at any time. */
  static void showAll(Window owner) {
    new CautionDialog(owner, "cautions", Messages.of("caution.all"), allWords(), false)
        .setVisible(true);
  }

  /** Every caution of the one resource that also commands and printed sheets take theirs from. */
  private static JComponent allWords() {
    JPanel words = new JPanel();
    words.setLayout(new BoxLayout(words, BoxLayout.Y_AXIS));
    words.setBorder(BorderFactory.createEmptyBorder(16, 24, 8, 24));
    for (Caution caution : Cautions.all()) {
      paragraph(words, "<b>%s.</b> %s".formatted(escape(caution.title()), escape(caution.text())));
    }
    JScrollPane all =
        new JScrollPane(
            words, JScrollPane.VERTICAL_SCROLLBAR_ALWAYS, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    all.setBorder(null);
    all.getVerticalScrollBar().setUnitIncrement(20);
    Dimension whole = words.getPreferredSize();
    all.setPreferredSize(new Dimension(whole.width + 24, Math.min(HIGH, whole.height)));
    SwingUtilities.invokeLater(() -> all.getViewport().setViewPosition(new Point()));
    return all;
  }

  /** The cautions of these zones' kinds, one line each. */
  private static String headings(List<HazardZone> zones) {
    return zones.stream()
        .map(HazardZone::kind)
        .distinct()
        .map(Cautions::of)
        .map(caution -> caution.title() + ". " + caution.text())
        .collect(Collectors.joining("\n\n"));
  }

  private static JComponent words(List<HazardZone> zones, Function<HazardZone, String> nameOf) {
    JPanel words = new JPanel();
    words.setLayout(new BoxLayout(words, BoxLayout.Y_AXIS));
    words.setBorder(BorderFactory.createEmptyBorder(16, 24, 8, 24));
    JLabel heading = paragraph(words, escape(headings(zones)));
    heading.putClientProperty("FlatLaf.styleClass", "h3");
    zones.stream()
        .filter(zone -> !zone.note().isEmpty())
        .map(zone -> Messages.of("caution.zone", capital(nameOf.apply(zone)), zone.note()))
        .distinct()
        .forEach(line -> paragraph(words, escape(line)));
    paragraph(words, Messages.of("caution.rules"));
    paragraph(words, Messages.of("caution.who"));
    paragraph(words, Messages.of("app.notice"));
    return words;
  }

  private static JLabel paragraph(JPanel words, String html) {
    JLabel label = new JLabel("<html><body style='width:%dpx'>%s".formatted(WIDE, html));
    label.setBorder(BorderFactory.createEmptyBorder(0, 0, 12, 0));
    label.setAlignmentX(LEFT_ALIGNMENT);
    words.add(label);
    return label;
  }

  private static String capital(String name) {
    return name.substring(0, 1).toUpperCase(Locale.getDefault()) + name.substring(1);
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\n", "<br>");
  }

  private JComponent buttons(boolean canGoBack) {
    JPanel row = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 8));
    row.setBorder(BorderFactory.createEmptyBorder(4, 16, 12, 16));
    JButton back = new JButton(Messages.of("caution.back"));
    back.addActionListener(pressed -> dispose());
    done.addActionListener(pressed -> close());
    if (canGoBack) {
      row.add(back);
    }
    row.add(done);
    bindEnter(done, this::close);
    bindEnter(back, this::dispose);
    bindAnywhere("ESCAPE", this::dispose);
    bindAnywhere("ctrl ENTER", this::close);
    return row;
  }

  private void bindAnywhere(String key, Runnable deed) {
    getRootPane()
        .getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
        .put(KeyStroke.getKeyStroke(key), key);
    getRootPane()
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }

  /** Enter presses the button that has the keyboard; none stands out but that one. */
  private static void bindEnter(JButton button, Runnable deed) {
    button.registerKeyboardAction(
        pressed -> deed.run(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
  }

  private void close() {
    read = true;
    dispose();
  }

  /** The yellow and black band with a triangle of our own, after ISO 3864 and ISO 7010 W012. */
  private static final class Band extends JComponent {
    Band() {
      setPreferredSize(new Dimension(WIDE, 64));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      Graphics2D g = (Graphics2D) graphics.create();
      try {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.WARNING_YELLOW);
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Palette.WARNING_BLACK);
        for (int x = -getHeight(); x < getWidth() + getHeight(); x += 48) {
          stripe(g, x, getHeight() - 12, 12);
          stripe(g, x, 0, 12);
        }
        triangle(g, 24 + 22, getHeight() / 2.0);
      } finally {
        g.dispose();
      }
    }

    private static void stripe(Graphics2D g, int x, int y, int high) {
      Path2D stripe = new Path2D.Double();
      stripe.moveTo(x + high, y);
      stripe.lineTo(x + high + 24, y);
      stripe.lineTo(x + 24, y + high);
      stripe.lineTo(x, y + high);
      stripe.closePath();
      g.fill(stripe);
    }

    private static void triangle(Graphics2D g, double x, double y) {
      Path2D sign = new Path2D.Double();
      sign.moveTo(x, y - 18);
      sign.lineTo(x + 20, y + 16);
      sign.lineTo(x - 20, y + 16);
      sign.closePath();
      g.setColor(Palette.WARNING_YELLOW);
      g.fill(sign);
      g.setColor(Color.BLACK);
      g.setStroke(new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      g.draw(sign);
      Path2D bolt = new Path2D.Double();
      bolt.moveTo(x + 3, y - 9);
      bolt.lineTo(x - 5, y + 4);
      bolt.lineTo(x, y + 4);
      bolt.lineTo(x - 3, y + 13);
      bolt.lineTo(x + 6, y - 1);
      bolt.lineTo(x + 1, y - 1);
      bolt.closePath();
      g.fill(bolt);
    }
  }
}
