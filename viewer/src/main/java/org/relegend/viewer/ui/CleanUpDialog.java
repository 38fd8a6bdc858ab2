package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.GridLayout;
import java.awt.Window;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.KeyStroke;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.tile.CleanUp;
import org.relegend.viewer.view.Orientation;
import org.relegend.viewer.view.ViewState;

/** Makes a poor scan easier to read while one looks on; the file stays as it is. */
final class CleanUpDialog extends JDialog {
  private static final int STEPS = 100;

  private final PictureCanvas canvas;
  private final JSlider brightness = new JSlider(-STEPS, STEPS, 0);
  private final JSlider contrast = new JSlider(-STEPS, STEPS, 0);
  private final JSlider threshold = new JSlider(0, 255, 0);
  private final JSlider tilt =
      new JSlider((int) (-10 * Orientation.MAX_TILT), (int) (10 * Orientation.MAX_TILT), 0);

  private CleanUpDialog(Window owner, PictureCanvas canvas) {
    super(owner, Messages.of("clean.title"), ModalityType.MODELESS);
    setName("clean");
    this.canvas = canvas;
    CleanUp now = canvas.cleanUp();
    brightness.setValue((int) Math.round(now.brightness() * STEPS));
    contrast.setValue((int) Math.round(Math.log(now.contrast()) / Math.log(8) * STEPS));
    threshold.setValue(now.threshold());
    canvas
        .view()
        .ifPresent(view -> tilt.setValue((int) Math.round(10 * view.orientation().tilt())));
    JPanel rows = new JPanel(new GridLayout(0, 2, 12, 10));
    rows.setBorder(BorderFactory.createEmptyBorder(16, 20, 8, 20));
    add(rows, "clean.brightness", brightness, value -> clean());
    add(rows, "clean.contrast", contrast, value -> clean());
    add(rows, "clean.threshold", threshold, value -> clean());
    add(rows, "clean.tilt", tilt, this::turn);
    add(rows, BorderLayout.CENTER);
    add(foot(), BorderLayout.SOUTH);
    getRootPane()
        .registerKeyboardAction(
            pressed -> dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    pack();
    setLocationRelativeTo(owner);
  }

  static void show(Window owner, PictureCanvas canvas) {
    new CleanUpDialog(owner, canvas).setVisible(true);
  }

  private static void add(JPanel rows, String key, JSlider slider, IntConsumer changed) {
    JLabel label = new JLabel(Messages.of(key));
    label.setLabelFor(slider);
    slider.getAccessibleContext().setAccessibleName(Messages.of(key));
    slider.addChangeListener(moved -> changed.accept(slider.getValue()));
    rows.add(label);
    rows.add(slider);
  }

  private JComponent foot() {
    JPanel foot = new JPanel(new BorderLayout());
    foot.setBorder(BorderFactory.createEmptyBorder(0, 20, 10, 14));
    foot.add(new JLabel(Messages.of("clean.note")), BorderLayout.WEST);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    JButton reset = new JButton(Messages.of("clean.reset"));
    reset.addActionListener(
        pressed -> {
          brightness.setValue(0);
          contrast.setValue(0);
          threshold.setValue(0);
          tilt.setValue(0);
        });
    JButton close = new JButton(Messages.of("keys.close"));
    close.addActionListener(pressed -> dispose());
    buttons.add(reset);
    buttons.add(close);
    foot.add(buttons, BorderLayout.SOUTH);
    return foot;
  }

  private void clean() {
    double steep = Math.pow(8, contrast.getValue() / (double) STEPS);
    double bright = brightness.getValue() / (double) STEPS;
    canvas.setCleanUp(new CleanUp(bright, Math.max(0.25, steep), threshold.getValue()));
  }

  private void turn(int tenths) {
    canvas
        .view()
        .map(ViewState::orientation)
        .ifPresent(now -> canvas.setOrientation(now.tilted(tenths / 10.0)));
  }
}
