package trimwright.file;

import java.util.Collection;
import java.util.Locale;

/** Finds the known word that a mistyped one most likely stands for. */
public final class Nearest {

    private Nearest() {}

    /** The known word that {@code found} probably stands for: the one with the fewest typing errors, the first of equals; empty when it has too many. */
    public static String to(String found, Collection<String> known) {
        String best = "";
        int fewest = Integer.MAX_VALUE;
        for (String word : known) {
            int errors = errors(found, word);
            if (errors < fewest) {
                fewest = errors;
                best = word;
            }
        }
        return fewest <= Math.max(1, found.length() / 3) ? best : "";
    }

    /** Typing errors between the two; an ending left off, such as the unit in {@code massG}, counts as one. */
    private static int errors(String foundWord, String knownWord) {
        String found = foundWord.toLowerCase(Locale.ROOT);
        String word = knownWord.toLowerCase(Locale.ROOT);
        int whole = distance(found, word);
        if (found.isEmpty() || found.length() >= word.length()) {
            return whole;
        }
        return Math.min(whole, 1 + distance(found, word.substring(0, found.length())));
    }

    /** Edit distance (Damerau and Levenshtein, restricted): letters to put in, take out or exchange, and pairs that stand the wrong way. */
    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        int[] before = row;
        for (int i = 1; i <= from.length(); i++) {
            int[] next = new int[row.length];
            next[0] = i;
            for (int j = 1; j < next.length; j++) {
                int exchanged = row[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                next[j] = Math.min(exchanged, 1 + Math.min(row[j], next[j - 1]));
                if (isSwapped(from, i, to, j)) {
                    next[j] = Math.min(next[j], before[j - 2] + 1);
                }
            }
            before = row;
            row = next;
        }
        return row[to.length()];
    }

    private static boolean isSwapped(String from, int i, String to, int j) {
        return i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
    }
}
