package dev.warmlane.scenario;

/** Makes docs/scenario.md from the schema. */
final class SchemaDocument {

    private static final String OPENING = """
            # Scenario file

            One job is one file in [TOML](https://toml.io). Examples with comments are in `examples/scenarios`. This page is made
            from the schema that the reader walks (`mvn -pl simulator test -Dtest=SchemaTest -Ddocs.write=true`).

            - Every quantity is a text in quotes with its unit, metric or US: `"8000 ft2"`, `"27 degC"`, `"0.05 kg/s/m2"`. Each
              may be written in any unit of its dimension, whatever the report uses. Ranges below are in the unit shown.
            - Units may stand in words and in letters of any size, numbers with their thousands parted, fractions: `"400,000 BTU/hr"`,
              `"5 1/2 feet"`. So may two sides for an area, `"25 m x 12.5 m"`, feet with inches, `"8 ft 6 in"`, a roof's rise over
              its run for a tilt, `"4:12"`, a direction in words, `"south-west"`. The decimal sign is a point. A comma or
              a point that may part thousands or decimals, `"1.250 m2"`, is asked back.
            - Counts and factors are plain numbers. Shares are plain numbers or percentages: `0.8` or `"80 %"`.
            - A day of the year is month and day as in ISO 8601, `"05-15"`, or with the month's name, `"15 May"`. Hours are those of
              local standard time, so that with daylight saving time nine o'clock on the door is 8 here: `"20-8"` or `"8 pm to
              8 am"` runs over midnight.
            - A value that is left out and has a usual one is assumed, and the report lists it with where it comes from.
            - Everything wrong with a file is reported at once, each in one line with file, line, section and key. Unknown
              sections and keys are errors. Only errors of TOML syntax hide what else is wrong.

            """;

    private SchemaDocument() {}

    static String text() {
        StringBuilder text = new StringBuilder(OPENING);
        for (SectionSchema section : Schema.SECTIONS) {
            section(text, section, section.heading());
            for (SectionSchema part : section.parts()) {
                section(text, part, section.heading(part));
            }
        }
        return text.toString().stripTrailing() + "\n";
    }

    private static void section(StringBuilder text, SectionSchema section, String heading) {
        text.append("## `").append(heading).append("`\n\n");
        String meaning = section.meaning();
        text.append(Character.toUpperCase(meaning.charAt(0))).append(meaning.substring(1));
        text.append(section.needed() ? ". Required.\n\n" : ".\n\n");
        text.append("| key | meaning | allowed | without it |\n|---|---|---|---|\n");
        section.keys().forEach(key -> row(text, key));
        text.append('\n');
    }

    private static <T> void row(StringBuilder text, Key<T> key) {
        text.append("| `").append(key.name()).append("` | ").append(key.meaning());
        text.append(" | ").append(key.kind().allowed()).append(" | ");
        T usual = key.usual();
        if (usual == null) {
            text.append(key.otherwise());
        } else {
            text.append('`').append(key.kind().write(usual)).append('`');
            text.append(key.why().isEmpty() ? "" : " assumed: " + key.why());
        }
        text.append(" |\n");
    }
}
