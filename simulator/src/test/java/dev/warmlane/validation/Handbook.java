package dev.warmlane.validation;

import dev.warmlane.DocBlock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an experiment's page ends with: a row for each quantity, and the front of the handbook, docs/validation.md, in which the
 * rows of all pages are put together.
 */
public final class Handbook {

    static final String FRONT = "validation.md";
    static final Path PAGES = Path.of("..", "docs", "validation");

    private static final String BLOCK = "quantities";

    private static final String HEAD = """
            | quantity | experiment | values | mean measured | bias | scatter | measured within |
            |---|---|---|---|---|---|---|
            """;

    private static final Pattern ROWS = Pattern.compile("(?s)<!-- computed: " + BLOCK + " -->\n(.*?)<!-- end -->");

    private Handbook() {}

    /** Checks an experiment's rows in its page, or writes them, and the front with them. */
    public static void check(String page, String rows) throws IOException {
        DocBlock.check(page, BLOCK, HEAD + rows);
        if (Boolean.getBoolean("docs.write")) {
            checkFront();
        }
    }

    /** Checks that the front has what the pages say, or writes it. */
    static void checkFront() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path page : pages()) {
            texts.put(page.getFileName().toString(), Files.readString(page).replace("\r\n", "\n"));
        }
        DocBlock.check(FRONT, BLOCK, front(texts));
    }

    /** The front's table from the texts of pages by their names. */
    static String front(Map<String, String> pages) {
        List<Row> rows = new ArrayList<>();
        pages.forEach((page, text) -> {
            Matcher block = ROWS.matcher(text);
            if (block.find()) {
                block.group(1).lines().skip(2).map(line -> Row.of(line, page)).forEach(rows::add);
            }
        });
        StringBuilder table = new StringBuilder("""
                | quantity | experiments | values | bias | scatter | measured within |
                |---|---|---|---|---|---|
                """);
        rows.stream()
                .map(Row::quantity)
                .distinct()
                .map(quantity -> rows.stream()
                        .filter(row -> row.quantity.equals(quantity))
                        .toList())
                .forEach(of -> table.append(together(of)));
        return table.toString();
    }

    static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    /** A row in per cent of the mean measured value. */
    public static String percent(
            String quantity, String experiment, Residuals residuals, String unit, String measuredWithin) {
        double mean = residuals.meanMeasured();
        return row(
                quantity,
                experiment,
                residuals.rows(),
                number(mean) + " " + unit,
                DocBlock.signed(100 * residuals.bias() / mean, 1) + " %",
                String.format(Locale.ROOT, "%.1f %%", 100 * residuals.scatter() / mean),
                measuredWithin);
    }

    /** A row in the unit of the quantity, which has no ratio: temperatures. */
    public static String kelvin(String quantity, String experiment, Residuals residuals, String measuredWithin) {
        return row(
                quantity,
                experiment,
                residuals.rows(),
                number(residuals.meanMeasured()) + " °C",
                DocBlock.signed(residuals.bias(), 2) + " K",
                String.format(Locale.ROOT, "%.2f K", residuals.scatter()),
                measuredWithin);
    }

    private static String row(
            String quantity,
            String experiment,
            int values,
            String mean,
            String bias,
            String scatter,
            String measuredWithin) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %s | %s | %s | %s |\n",
                quantity,
                experiment,
                values,
                mean,
                bias,
                scatter,
                measuredWithin);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.1f" : "%.0f", value);
    }

    /** Mean of the biases and scatter about it, each experiment by the number of its values. */
    private static String together(List<Row> rows) {
        int values = rows.stream().mapToInt(Row::values).sum();
        double bias = rows.stream().mapToDouble(row -> row.values * row.bias).sum() / values;
        double square = rows.stream()
                        .mapToDouble(
                                row -> row.values * (row.scatter * row.scatter + (row.bias - bias) * (row.bias - bias)))
                        .sum()
                / values;
        Row first = rows.get(0);
        int decimals = first.unit.equals("K") ? 2 : 1;
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %s %s | %." + decimals + "f %s | %s |\n",
                first.quantity,
                rows.stream().map(Row::link).distinct().collect(Collectors.joining(", ")),
                values,
                DocBlock.signed(bias, decimals),
                first.unit,
                Math.sqrt(square),
                first.unit,
                rows.stream().map(Row::within).distinct().collect(Collectors.joining("; ")));
    }

    private record Row(
            String quantity, String link, int values, double bias, double scatter, String unit, String within) {

        static Row of(String line, String page) {
            String[] cells = line.split("\\|", -1);
            String[] bias = cells[5].strip().split(" ", -1);
            String[] scatter = cells[6].strip().split(" ", -1);
            if (!bias[1].equals(scatter[1])) {
                throw new IllegalArgumentException("bias and scatter in one unit, was " + line);
            }
            return new Row(
                    cells[1].strip(),
                    "[" + cells[2].strip() + "](validation/" + page + ")",
                    Integer.parseInt(cells[3].strip()),
                    Double.parseDouble(bias[0]),
                    Double.parseDouble(scatter[0]),
                    bias[1],
                    cells[7].strip());
        }
    }
}
