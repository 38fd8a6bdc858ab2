package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardTurn;
import org.relegend.map.Side;
import org.relegend.scan.PictureIntake;
import org.relegend.viewer.control.Messages;

/** Asks what a picture that is added shows. */
final class AddPictureDialogs {
  private static final String FIRST_BOARD = "main";
  private static final String LINES = "<html><body style='width:150px'>";

  private AddPictureDialogs() {}

  /** Whose photo it is. */
  enum Whose {
    UNIT,
    MAP
  }

  /**
   * What a photo shows.
   *
   * @param closeUp the parts that a close-up shows, as typed; empty for a whole side
   */
  record Asked(PictureIntake.Shown shown, Whose whose, String closeUp) {}

  /**
   * What a photo shows: its board, its side and, once for all, how the board was turned for it.
   *
   * @param job whether a job is open, which it may belong to
   */
  static Optional<Asked> askPhoto(Component over, BoardMap map, String fileName, boolean job) {
    JTextField title = new JTextField(fileName, 24);
    title.setName("title");
    JComboBox<String> board = new JComboBox<>(boards(map));
    board.setEditable(true);
    Choice<Side> side = new Choice<>(Side.class);
    side.add(Side.COMPONENT, Messages.of("photo.side.component"));
    side.add(Side.SOLDER, Messages.of("photo.side.solder"));
    Choice<BoardTurn> turn = new Choice<>(BoardTurn.class);
    turn.add(BoardTurn.SIDE_EDGE, Messages.of("addphoto.turn.side_edge"));
    turn.add(BoardTurn.TOP_EDGE, Messages.of("addphoto.turn.top_edge"));
    turn.add(BoardTurn.UNKNOWN, Messages.of("addphoto.turn.unknown"));
    side.onChange(() -> turn.setEnabled(side.chosen() == Side.SOLDER));
    turn.setEnabled(false);
    Choice<Whose> whose = new Choice<>(Whose.class);
    whose.add(Whose.UNIT, Messages.of("addphoto.whose.unit"));
    whose.add(Whose.MAP, Messages.of("addphoto.whose.map"));
    JTextField closeUp = new JTextField(24);
    closeUp.setName("closeup");
    whose.onChange(() -> closeUp.setEnabled(whose.chosen() == Whose.UNIT));
    PictureForm form = new PictureForm();
    form.row(Messages.of("addphoto.name"), title);
    if (job) {
      form.row(Messages.of("addphoto.whose"), whose.panel());
      form.row(LINES + Messages.of("addphoto.closeup"), closeUp);
    }
    form.row(Messages.of("addphoto.board"), board);
    form.row(Messages.of("addphoto.side"), side.panel());
    form.row(LINES + Messages.of("addphoto.turn"), turn.panel());
    while (form.ask(over, Messages.of("addphoto.title"), title)) {
      String name = String.valueOf(board.getSelectedItem()).strip();
      try {
        Whose chosen = job ? whose.chosen() : Whose.MAP;
        return Optional.of(
            new Asked(
                new PictureIntake.Shown(
                    title.getText().strip(), new BoardId(name), side.chosen(), turn.chosen()),
                chosen,
                chosen == Whose.UNIT ? closeUp.getText().strip() : ""));
      } catch (IllegalArgumentException noName) {
        JOptionPane.showMessageDialog(
            over, noName.getMessage(), Messages.of("error.title"), JOptionPane.ERROR_MESSAGE);
      }
    }
    return Optional.empty();
  }

  private static String[] boards(BoardMap map) {
    List<String> names = new ArrayList<>();
    map.boards().stream().map(Board::id).map(BoardId::text).forEach(names::add);
    if (names.isEmpty()) {
      names.add(FIRST_BOARD);
    }
    return names.toArray(new String[0]);
  }

  /** A title and which pages of a file. */
  record Pages(String title, List<Integer> numbers) {
    Pages {
      numbers = List.copyOf(numbers);
    }
  }

  /** Which pages of a file; without asking for numbers where it has just one. */
  static Optional<Pages> askPages(Component over, String fileName, int count) {
    JTextField title = new JTextField(fileName, 24);
    title.setName("title");
    JList<Integer> list =
        new JList<>(IntStream.rangeClosed(1, count).boxed().toArray(Integer[]::new));
    list.setVisibleRowCount(Math.min(8, count));
    list.setSelectionInterval(0, count - 1);
    PictureForm form = new PictureForm();
    form.row(Messages.of("addpage.name"), title);
    if (count > 1) {
      form.row(Messages.of("addpage.pages", fileName, count), new JScrollPane(list));
    }
    boolean add = form.ask(over, Messages.of("addpage.title"), title);
    List<Integer> numbers = list.getSelectedValuesList();
    return add && !numbers.isEmpty()
        ? Optional.of(new Pages(title.getText().strip(), numbers))
        : Optional.empty();
  }

  /** Labels on the left, what is asked on the right. */
  private static final class PictureForm {
    private final JPanel panel = new JPanel(new GridBagLayout());
    private int rows;

    void row(String label, JComponent asked) {
      JLabel text = new JLabel(label);
      text.setLabelFor(asked);
      put(text, 0);
      put(asked, 1);
      rows++;
    }

    private void put(Component what, int x) {
      GridBagConstraints place = new GridBagConstraints();
      place.gridx = x;
      place.gridy = rows;
      place.anchor = GridBagConstraints.FIRST_LINE_START;
      place.fill = GridBagConstraints.HORIZONTAL;
      place.weightx = x;
      place.insets = new Insets(5, 4, 5, 12);
      panel.add(what, place);
    }

    boolean ask(Component over, String title, JComponent first) {
      Object[] options = {Messages.of("dialog.add"), Messages.of("dialog.cancel")};
      JPanel content = new JPanel(new BorderLayout());
      content.add(panel, BorderLayout.NORTH);
      JOptionPane pane =
          new JOptionPane(
              content,
              JOptionPane.PLAIN_MESSAGE,
              JOptionPane.OK_CANCEL_OPTION,
              null,
              options,
              options[0]) {
            /** The keyboard begins in the first line; Enter adds from anywhere. */
            @Override
            public void selectInitialValue() {
              super.selectInitialValue();
              first.requestFocusInWindow();
            }
          };
      JDialog dialog = pane.createDialog(over, title);
      dialog.setName("add");
      dialog.setVisible(true);
      dialog.dispose();
      return options[0].equals(pane.getValue());
    }
  }

  /** One of several, each with a button. */
  private static final class Choice<E extends Enum<E>> {
    private final Map<E, JRadioButton> buttons;
    private final ButtonGroup one = new ButtonGroup();
    private final JPanel panel = new JPanel();
    private final E[] all;

    Choice(Class<E> type) {
      buttons = new EnumMap<>(type);
      all = type.getEnumConstants();
      panel.setLayout(new BoxLayout(panel, BoxLayout.Y_AXIS));
    }

    void add(E value, String text) {
      JRadioButton button = new JRadioButton(text);
      button.setSelected(buttons.isEmpty());
      one.add(button);
      buttons.put(value, button);
      panel.add(button);
      panel.add(Box.createVerticalStrut(2));
    }

    void onChange(Runnable listener) {
      buttons.values().forEach(button -> button.addActionListener(pressed -> listener.run()));
    }

    void setEnabled(boolean enabled) {
      buttons.values().forEach(button -> button.setEnabled(enabled));
    }

    E chosen() {
      for (Map.Entry<E, JRadioButton> entry : buttons.entrySet()) {
        if (entry.getValue().isSelected()) {
          return entry.getKey();
        }
      }
      return all[0];
    }

    JPanel panel() {
      return panel;
    }
  }
}
