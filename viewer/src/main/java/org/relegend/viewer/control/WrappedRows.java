package org.relegend.viewer.control;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.text.Position;

/** A list whose rows have a sign, a line and more words; long ones go on in the next line. */
public final class WrappedRows<T> extends JList<T> {
  private static final int SIGN = 130;
  private static final int BESIDE = SIGN + 50;
  private static final int NARROWEST = 260;

  /** Screen pixels that a px of Swing's style sheets is long. */
  private static final double SWING_PIXEL = 1.3;

  /** What a row says. */
  public record Words(String sign, String line, String more) {}

  private final transient Function<T, Words> words;
  private final DefaultListModel<T> rows;

  public WrappedRows(String name, Function<T, Words> words) {
    this(name, words, new DefaultListModel<>());
  }

  private WrappedRows(String name, Function<T, Words> words, DefaultListModel<T> rows) {
    super(rows);
    this.words = words;
    this.rows = rows;
    setName(name);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setCellRenderer(
        (JList<? extends T> of, T row, int index, boolean chosen, boolean focused) ->
            render(row, chosen));
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            setFixedCellHeight(1); // forgets how high the rows were
            setFixedCellHeight(-1);
          }
        });
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  /** Letters are commands here, not the beginning of a row to go to. */
  @Override
  public int getNextMatch(String prefix, int start, Position.Bias bias) {
    return -1;
  }

  /** Shows these; the one chosen stays chosen by its number. */
  public void show(List<T> shown) {
    int kept = getSelectedIndex();
    rows.clear();
    rows.addAll(shown);
    setSelectedIndex(Math.max(0, Math.min(shown.size() - 1, kept)));
  }

  public Optional<T> chosen() {
    return Optional.ofNullable(getSelectedValue());
  }

  /** Binds a key to the chosen row. */
  public void onKey(String key, Consumer<T> deed) {
    getInputMap().put(KeyStroke.getKeyStroke(key), key);
    getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                chosen().ifPresent(deed);
              }
            });
  }

  /** Binds Enter and a click to the chosen row. */
  public void onOpen(Consumer<T> deed) {
    onKey("ENTER", deed);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            chosen().ifPresent(deed);
          }
        });
  }

  private Component render(T row, boolean chosen) {
    Words says = words.apply(row);
    JPanel panel = new JPanel(new BorderLayout(12, 0));
    panel.setBorder(BorderFactory.createEmptyBorder(5, 8, 5, 8));
    JLabel sign = new JLabel(says.sign());
    sign.putClientProperty("FlatLaf.styleClass", "h4");
    sign.setPreferredSize(new Dimension(SIGN, sign.getPreferredSize().height));
    JLabel line = new JLabel(wrapped(says.line()));
    JLabel more = new JLabel(wrapped(says.more()));
    more.putClientProperty("FlatLaf.styleClass", "medium");
    JPanel text = new JPanel(new BorderLayout());
    text.setOpaque(false);
    text.add(line, BorderLayout.NORTH);
    text.add(more, BorderLayout.SOUTH);
    panel.add(sign, BorderLayout.WEST);
    panel.add(text, BorderLayout.CENTER);
    String part = chosen ? "selectionForeground" : "foreground";
    panel.setBackground(
        UIManager.getColor(chosen ? "List.selectionBackground" : "List.background"));
    List.of(sign, line, more)
        .forEach(label -> label.setForeground(UIManager.getColor("List." + part)));
    panel
        .getAccessibleContext()
        .setAccessibleName("%s: %s. %s".formatted(says.sign(), says.line(), says.more()));
    return panel;
  }

  private String wrapped(String text) {
    return "<html><body style='width:%dpx'>%s"
        .formatted(
            (int) (Math.max(NARROWEST, getWidth() - BESIDE) / SWING_PIXEL),
            text.replace("&", "&amp;").replace("<", "&lt;"));
  }
}
