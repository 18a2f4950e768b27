package dev.warmlane.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
public final class Spelling {

    private Spelling() {}

    /**
     * The candidate that needs the fewest insertions, deletions, substitutions and swaps of neighbours (optimal string
     * alignment distance, upper and lower case alike), if that is at most one for every three letters of the word and
     * one more. Of equals the first.
     */
    public static Optional<String> nearest(String word, Collection<String> candidates) {
        int best = 2 + word.length() / 3;
        String found = "";
        for (String candidate : candidates) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < best && distance < Math.max(word.length(), candidate.length())) {
                best = distance;
                found = candidate;
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    /** Optimal string alignment distance by the usual table of prefixes. */
    static int distance(String a, String b) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                table[i][j] = i == 0 || j == 0 ? i + j : cheapest(table, a, b, i, j);
            }
        }
        return table[a.length()][b.length()];
    }

    private static int cheapest(int[][] table, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int cost = Math.min(table[i - 1][j - 1] + change, 1 + Math.min(table[i - 1][j], table[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(cost, table[i - 2][j - 2] + 1) : cost;
    }
}
