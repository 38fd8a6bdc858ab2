package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.relegend.viewer.paint.Palette;

/** One thing about the open map that one must know, across the window, until dealt with. */
final class Banner extends JPanel {
  /** What one may do about it. */
  record Choice(String text, Runnable deed) {}

  private final JLabel text = new JLabel();
  private final JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));

  Banner() {
    super(new BorderLayout(12, 0));
    setName("banner");
    setBackground(Palette.YELLOW);
    text.setForeground(Palette.BLACK);
    buttons.setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(6, 12, 6, 12));
    add(text, BorderLayout.CENTER);
    add(buttons, BorderLayout.EAST);
    setVisible(false);
  }

  void say(String what, List<Choice> choices) {
    text.setText(what);
    getAccessibleContext().setAccessibleName(what);
    buttons.removeAll();
    for (Choice choice : choices) {
      JButton button = new JButton(choice.text());
      button.addActionListener(
          pressed -> {
            setVisible(false);
            choice.deed().run();
          });
      buttons.add(button);
    }
    setVisible(true);
    revalidate();
  }

  void close() {
    setVisible(false);
  }
}
