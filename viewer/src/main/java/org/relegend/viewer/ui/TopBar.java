package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToggleButton;
import org.relegend.map.Evidence;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Tool;

/** Tools, the find field, the evidence in use; and the sentence that always stands there. */
final class TopBar extends JPanel {
  private static final Map<Tool, Act> ACTS =
      Map.of(
          Tool.LOOK, Act.BACK,
          Tool.PLACE, Act.PLACE,
          Tool.PINS, Act.PINS,
          Tool.TRACE, Act.TRACE,
          Tool.ZONE, Act.ZONE,
          Tool.LINE_UP, Act.LINE_UP,
          Tool.MEASURE, Act.MEASURE);

  private final Session session;
  private final Acts acts;
  private final Consumer<Tool> take;
  private final ButtonGroup group = new ButtonGroup();
  private final Map<Tool, AbstractButton> tools = new EnumMap<>(Tool.class);
  private final JButton evidence = new JButton();

  /**
   * @param take takes a tool in hand
   */
  TopBar(Session session, Acts acts, FindField field, Consumer<Tool> take) {
    super(new BorderLayout(0, 4));
    this.session = session;
    this.acts = acts;
    this.take = take;
    setBorder(BorderFactory.createEmptyBorder(8, 10, 4, 10));
    JPanel line = new JPanel(new BorderLayout(12, 0));
    line.add(toolButtons(), BorderLayout.WEST);
    line.add(field, BorderLayout.CENTER);
    line.add(evidenceButton(), BorderLayout.EAST);
    add(line, BorderLayout.CENTER);
    JLabel notice = new JLabel(Texts.of("app.notice"));
    notice.setName("notice");
    add(notice, BorderLayout.SOUTH);
    settle();
  }

  private JComponent toolButtons() {
    JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 2, 0));
    row.getAccessibleContext().setAccessibleName(Texts.of("tool.group"));
    for (Tool tool : Tool.values()) {
      if (!ACTS.containsKey(tool)) {
        continue; // seldom wanted: in the menu, by its key
      }
      JToggleButton button = new JToggleButton(Texts.of("tool." + Texts.word(tool)));
      Act act = ACTS.getOrDefault(tool, Act.BACK);
      button.setToolTipText(withKey(act));
      button.setFocusable(false);
      button.setName("tool-" + Texts.word(tool));
      button.addActionListener(pressed -> take.accept(tool));
      group.add(button);
      row.add(button);
      tools.put(tool, button);
    }
    return row;
  }

  private static String withKey(Act act) {
    return act.text() + act.key().map(key -> "  (" + Keys.text(key) + ")").orElse("");
  }

  private JComponent evidenceButton() {
    evidence.setFocusable(false);
    evidence.setToolTipText(Texts.of("evidence.group"));
    evidence.addActionListener(pressed -> evidenceMenu().show(evidence, 0, evidence.getHeight()));
    return evidence;
  }

  private JPopupMenu evidenceMenu() {
    JPopupMenu menu = new JPopupMenu(Texts.of("evidence.group"));
    for (Evidence known : Evidence.values()) {
      menu.add(new JRadioButtonMenuItem(acts.action(actOf(known))));
    }
    return menu;
  }

  static Act actOf(Evidence evidence) {
    return Act.valueOf(evidence.name());
  }

  /** Shows the tool and the evidence in use. */
  void settle() {
    group.clearSelection();
    tools.forEach((tool, button) -> button.setSelected(tool == session.tool()));
    Evidence used = session.hand().evidence();
    String key = actOf(used).key().map(Keys::text).orElse("");
    String word = Texts.of("act." + Texts.word(used));
    evidence.setText(Texts.of("evidence.label") + ": " + key + " " + word + " \u25be");
    evidence.getAccessibleContext().setAccessibleName(Texts.of("evidence.label") + ": " + word);
    for (Evidence known : Evidence.values()) {
      acts.select(actOf(known), known == used);
    }
  }
}
