package dev.warmlane.examples;

import dev.warmlane.files.Printable;

/** The text of a scenario file from answers, with a remark on every line that somebody may want to change. */
final class DescribedScenario {

    private static final int REMARKS_AT = 36;

    private final StringBuilder text = new StringBuilder();
    private final Answers answers;

    private DescribedScenario(Answers answers) {
        this.answers = answers;
    }

    static String of(Answers answers) {
        return new DescribedScenario(answers).text();
    }

    private String text() {
        String file = Printable.line(String.valueOf(answers.file().getFileName()));
        String folder = file.replaceFirst("\\.toml$", "");
        remark("Written from answers to \"warmlane describe\". Change what you like in any text editor, then run");
        remark("  warmlane forecast " + quoted(file) + " --output " + quoted(folder));
        remark(
                "A line has a key, =, and a value; a quantity stands in quotes with its unit, metric or US. What follows # is");
        remark(
                "a remark. What is left out is assumed, and the forecast lists it. All sections and keys: docs/scenario.md");
        section("site");
        key("site.name", "");
        key("site.weather", "seen from the folder of this file");
        line("terrain", "\"suburban\"", "city, suburban, open or water: what the wind crosses");
        section("pool");
        key("pool.area", "the water surface");
        key("pool.depth", "mean depth");
        key("pool.setting", "");
        key("pool.wind_shelter", "sheltered, suburban or exposed: the largest uncertainty");
        key("pool.hall_temperature", "");
        key("pool.hall_humidity", "");
        if (bathers()) {
            key("pool.bathers", "in the water at once when it is full; the schedule below says when");
        } else {
            remark(
                    "bathers = 40                      # in the water at once when it is full; then also a [[schedule]]");
        }
        if (!answers.is("cover.kind", Questions.NONE)) {
            section("cover");
            key("cover.kind", "bubble, foam, solid-track or liquid-film");
            key("cover.drawn", "in standard time: an hour less than the clock in summer");
        }
        section("roof");
        key("roof.length", "");
        key("roof.width", "");
        key("roof.height", "above the ground");
        collectors();
        heater();
        money();
        section("season");
        key("season.first_day", "");
        key("season.last_day", "");
        key("season.open", "in standard time: an hour less than the clock in summer");
        key("season.comfort", "from here on the water is warm enough");
        if (bathers()) {
            section("[schedule]");
            line("what", "\"bathers\"", "the last rule that fits an hour counts");
            line("hours", answers.toml("season.open"), "the hours in which it is open");
            line("share", "\"30 %\"", "of full, as a mean while it is open; own choice, change it");
        }
        section("report");
        key("report.units", "metric or us");
        return text.toString();
    }

    private boolean bathers() {
        return answers.has("pool.bathers") && !answers.toml("pool.bathers").matches("\"?0*\\.?0*\"?");
    }

    private void collectors() {
        section("[collectors]");
        key("collectors.area", "usual black plastic mats; a test certificate is better");
        key("collectors.mounting", "flat, rack or pitched");
        key("collectors.tilt", "from the horizontal");
        key("collectors.azimuth", "the way they face");
        key("collectors.slope_length", "of the pitched roof, from eaves to ridge");
        if (answers.is("collectors.mounting", "rack")) {
            key("collectors.pitch", "from row to row");
            line("chord", answers.by("\"2 m\"", "\"6.5 ft\""), "length of a rack up the slope");
            line("clearance", answers.by("\"0.3 m\"", "\"1 ft\""), "lower edge above the roof");
            line("row_length", answers.toml("roof.length"), "taken for the length of the roof");
        }
    }

    private void heater() {
        if (answers.is(Questions.HEATER, Questions.NONE)) {
            return;
        }
        section("heater");
        line(Questions.electric(answers) ? "kind" : "fuel", answers.toml(Questions.HEATER), "");
        key("heater.capacity", "heat to the water at full load");
        key("heater.cop", "in air and water of 27 degC");
        key("heater.fuel_co2", "of the electricity");
        key("heater.set_point", "the collectors may warm further, up to limit of [control]");
    }

    private void money() {
        if (answers.is("prices.currency", Questions.NONE)) {
            return;
        }
        section("prices");
        key("prices.currency", "");
        key("prices.gas", "on the higher heating value");
        key("prices.fuel", "of what the heater burns");
        key("prices.electricity", "");
        key("prices.collectors", "installed");
    }

    private void section(String name) {
        text.append("\n[").append(name).append("]\n");
    }

    private void key(String id, String remark) {
        if (answers.has(id)) {
            line(id.substring(id.indexOf('.') + 1), answers.toml(id), remark);
        }
    }

    private void line(String key, String toml, String remark) {
        String line = key + " = " + toml;
        text.append(line);
        if (!remark.isEmpty()) {
            text.append(" ".repeat(Math.max(1, REMARKS_AT - line.length())))
                    .append("# ")
                    .append(remark);
        }
        text.append('\n');
    }

    private void remark(String words) {
        text.append("# ").append(words).append('\n');
    }

    private static String quoted(String name) {
        return name.contains(" ") ? "\"" + name + "\"" : name;
    }
}
