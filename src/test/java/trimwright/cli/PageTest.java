package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PageTest {

    @Test
    void aTableAlignsWordsLeftAndNumbersRight() {
        TextTable table =
                TextTable.of("lr").head("What", "mm").row("Draught", "92.3").row("B above G", "5.6");
        assertEquals("""
                What         mm
                ---------------
                Draught    92.3
                B above G   5.6
                """, new Page().table(table).toString());
    }

    @Test
    void headsMayTakeSeveralLines() {
        TextTable table = TextTable.of("r").head("Height").head("mm").row("1");
        assertEquals("Height\n    mm\n------\n     1\n", new Page().table(table).toString());
    }

    @Test
    void aRowHasNoMoreCellsThanColumns() {
        TextTable table = TextTable.of("l");
        assertThrows(IllegalArgumentException.class, () -> table.row("a", "b"));
    }

    @Test
    void paragraphsBreakBetweenWords() {
        String text = new Page().point("word ".repeat(60)).toString();
        assertTrue(text.lines().allMatch(l -> l.length() <= Page.WIDTH), text);
        assertTrue(text.startsWith("- word word"));
        assertTrue(text.lines().skip(1).allMatch(l -> l.startsWith("  word")), text);
        assertEquals(60, text.split("word", -1).length - 1);
    }

    @Test
    void gapsDoNotAddUp() {
        assertEquals(
                "a\n\nb\n", new Page().gap().line("a").gap().gap().line("b").toString());
    }
}
