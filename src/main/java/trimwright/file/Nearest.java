package trimwright.file;

import java.util.Collection;
import java.util.Locale;

/** Finds the known word that a mistyped one most likely stands for. */
final class Nearest {

    private Nearest() {}

    /** The known word with the fewest typing errors from {@code found}, the first of equals; empty when none is known. */
    static String to(String found, Collection<String> known) {
        String best = "";
        int fewest = Integer.MAX_VALUE;
        for (String word : known) {
            int errors = errors(found, word);
            if (errors < fewest) {
                fewest = errors;
                best = word;
            }
        }
        return best;
    }

    /** Whether so few typing errors lie between the two that the one probably stands for the other. */
    static boolean isLikely(String found, String word) {
        return errors(found, word) <= Math.max(1, found.length() / 3);
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

    /** Edit distance (Levenshtein): letters to put in, take out or exchange. */
    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int exchanged = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
