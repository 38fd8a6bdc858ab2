package org.relegend.viewer.control;

import java.util.List;
import java.util.Locale;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.text.AbstractDocument;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DocumentFilter;

/** A field to type in or to choose from; a word that is begun is completed from the list. */
public final class CompletionBox extends JComboBox<String> {
  private final transient List<String> words;

  public CompletionBox(List<String> words, String chosen) {
    super(words.toArray(String[]::new));
    this.words = words;
    setEditable(true);
    setSelectedItem(chosen);
    if (field().getDocument() instanceof AbstractDocument document) {
      document.setDocumentFilter(new CompletionFilter());
    }
  }

  public JTextField field() {
    return (JTextField) getEditor().getEditorComponent();
  }

  public String text() {
    return field().getText().strip();
  }

  /** The rest of the word stands marked behind what was typed, so that typing on replaces it. */
  private final class CompletionFilter extends DocumentFilter {
    @Override
    public void replace(
        FilterBypass bypass, int offset, int length, String text, AttributeSet attributes)
        throws BadLocationException {
      super.replace(bypass, offset, length, text, attributes);
      int end = bypass.getDocument().getLength();
      if (text == null || text.length() != 1 || offset + 1 != end) {
        return;
      }
      String begun = bypass.getDocument().getText(0, end);
      String start = begun.toLowerCase(Locale.ROOT);
      if (words.stream().anyMatch(begun::equalsIgnoreCase)) {
        return;
      }
      for (String word : words) {
        if (word.toLowerCase(Locale.ROOT).startsWith(start)) {
          bypass.insertString(end, word.substring(end), attributes);
          field().setCaretPosition(word.length());
          field().moveCaretPosition(end);
          return;
        }
      }
    }
  }
}
