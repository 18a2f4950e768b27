package dev.warmlane.fuzz;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What happens to weather files on their way: each is a way to break one, by chance. */
final class WeatherMutations {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /**
     * Mistakes of units and of decimal points. Factors nearer to 1 are not tried: air or wind one tenth higher all year
     * is the weather of another place, and nothing in the file contradicts it.
     */
    private static final Double[] FACTORS = {0.001, 0.01, 0.1, 1 / 3.6, 3.6, 10.0, 100.0, 1000.0, -1.0};

    private WeatherMutations() {}

    /** The bytes of a file with one to three things done to it. */
    static byte[] mutated(List<String> sound, int headers, boolean separated, Random chance) {
        List<String> lines = new ArrayList<>(sound);
        int times = 1 + chance.nextInt(3);
        boolean flip = false;
        boolean cut = false;
        for (int i = 0; i < times; i++) {
            switch (chance.nextInt(separated ? 9 : 6)) {
                case 0 -> flip = true;
                case 1 -> cut = true;
                case 2 -> header(lines, headers, chance);
                case 3 -> lines.add(row(lines, headers, chance), lines.get(row(lines, headers, chance)));
                case 4 -> lines.remove(row(lines, headers, chance));
                case 5 -> shift(lines, headers, separated, chance);
                case 6 -> cells(lines, headers, chance);
                case 7 -> scale(lines, headers, chance);
                default -> swapColumns(lines, headers, chance);
            }
        }
        byte[] bytes = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        for (int i = flip ? 1 + chance.nextInt(20) : 0; i > 0; i--) {
            bytes[chance.nextInt(bytes.length)] = (byte) chance.nextInt(256);
        }
        return cut ? Arrays.copyOf(bytes, chance.nextInt(bytes.length)) : bytes;
    }

    private static int row(List<String> lines, int headers, Random chance) {
        return Math.min(lines.size() - 1, headers + chance.nextInt(Math.max(1, lines.size() - headers)));
    }

    private static void header(List<String> lines, int headers, Random chance) {
        int line = chance.nextInt(headers);
        Matcher numbers = NUMBER.matcher(lines.get(line));
        List<int[]> places = new ArrayList<>();
        while (numbers.find()) {
            places.add(new int[] {numbers.start(), numbers.end()});
        }
        if (!places.isEmpty()) {
            int[] place = places.get(chance.nextInt(places.size()));
            String other = Fuzz.oneOf(chance, "0", "-5", "12.5", "36", "-36", "1e9", "", "99999", "NaN", "x");
            lines.set(
                    line,
                    new StringBuilder(lines.get(line))
                            .replace(place[0], place[1], other)
                            .toString());
        }
    }

    /** The values of the rows move against their stamps by some hours, those at the end going to the beginning. */
    private static void shift(List<String> lines, int headers, boolean separated, Random chance) {
        int by = 1 + chance.nextInt(30);
        List<String> rows = new ArrayList<>(lines.subList(headers, lines.size()));
        for (int i = 0; i < rows.size(); i++) {
            String from = rows.get(Math.floorMod(i - by, rows.size()));
            String to = rows.get(i);
            int keep = separated ? afterStamp(to) : Math.min(9, to.length());
            int take = separated ? afterStamp(from) : Math.min(9, from.length());
            lines.set(headers + i, to.substring(0, keep) + from.substring(take));
        }
    }

    /** Behind the last separator of the first cells that are no measurements: enough of them in every format. */
    private static int afterStamp(String row) {
        int cells = row.split(",", -1).length;
        int stamp = cells > 20 && row.indexOf('/') < 0 ? 5 : cells > 20 ? 2 : 1;
        int place = 0;
        for (int i = 0; i < stamp && row.indexOf(',', place) >= 0; i++) {
            place = row.indexOf(',', place) + 1;
        }
        return place;
    }

    private static void cells(List<String> lines, int headers, Random chance) {
        int from = row(lines, headers, chance);
        int rows = Fuzz.oneOf(chance, 1, 3, 40, 800, 9000);
        int kind = chance.nextInt(4);
        int a = chance.nextInt(40);
        int b = chance.nextInt(40);
        for (int i = from; i < Math.min(lines.size(), from + rows); i++) {
            List<String> cells = new ArrayList<>(List.of(lines.get(i).split(",", -1)));
            int first = a % cells.size();
            int second = b % cells.size();
            switch (kind) {
                case 0 -> cells.set(first, "");
                case 1 -> cells.add(first, cells.get(first));
                case 2 -> cells.set(first, Fuzz.oneOf(chance, "9999", "-999", "NaN", "calm", "1e308", "\"", "0"));
                default -> swap(cells, first, second);
            }
            lines.set(i, String.join(",", cells));
        }
    }

    private static void swap(List<String> cells, int first, int second) {
        String kept = cells.get(first);
        cells.set(first, cells.get(second));
        cells.set(second, kept);
    }

    private static void swapColumns(List<String> lines, int headers, Random chance) {
        int a = chance.nextInt(40);
        int b = chance.nextInt(40);
        for (int i = headers; i < lines.size(); i++) {
            List<String> cells = new ArrayList<>(List.of(lines.get(i).split(",", -1)));
            swap(cells, a % cells.size(), b % cells.size());
            lines.set(i, String.join(",", cells));
        }
    }

    private static void scale(List<String> lines, int headers, Random chance) {
        double factor = Fuzz.oneOf(chance, FACTORS);
        int column = chance.nextInt(40);
        for (int i = headers; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(",", -1);
            int at = column % cells.length;
            if (NUMBER.matcher(cells[at]).matches()) {
                cells[at] = decimals(Double.parseDouble(cells[at]) * factor);
            }
            lines.set(i, Arrays.stream(cells).collect(Collectors.joining(",")));
        }
    }

    private static String decimals(double value) {
        return new BigDecimal(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
