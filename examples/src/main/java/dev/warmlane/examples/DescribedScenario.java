package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.ScenarioAnswer;

/** The text of a scenario file from answers, with a remark on every line that says what it is and whether anybody said it. */
final class DescribedScenario {

    private static final int REMARKS_AT = 36;
    private static final String ASSUMED = "assumed";

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
        remark("Written from answers to \"warmlane describe\". Change what you like in any text editor, then run");
        remark("  warmlane forecast " + quoted(file) + " --output " + quoted(file.replaceFirst("\\.toml$", "")));
        remark(
                "A line has a key, =, and a value; a quantity stands in quotes with its unit, metric or US. What follows # is");
        remark(
                "a remark. \"assumed\" stands where nobody said anything and the usual value was taken: common practice without");
        remark(
                "a source, where none is named. All the rest was answered; the forecast takes both as told. What stands nowhere is");
        remark("assumed too, and the forecast lists it. All sections and keys: docs/scenario.md");
        section("site");
        key("site.name", "what the job is called");
        key("site.weather", "seen from the folder of this file");
        key("site.terrain", "city, suburban, open or water: what the wind crosses");
        section("pool");
        key("pool.area", "the water surface");
        key("pool.depth", "mean depth");
        key("pool.setting", "outdoor or indoor");
        key("pool.wind_shelter", "sheltered, suburban or exposed: the largest uncertainty");
        key("pool.hall_temperature", "of air and walls");
        key("pool.hall_humidity", "relative");
        key("pool.bathers", "in the water at once when it is full");
        if (!answers.is(Questions.COVER, Questions.NONE)) {
            section("cover");
            key("cover.kind", "bubble, foam, solid-track or liquid-film");
            key("cover.drawn", Questions.STANDARD_TIME);
        }
        section("roof");
        key("roof.length", "of the roof, or of the building below it");
        key("roof.width", "");
        key("roof.area", "taken for a square");
        key("roof.height", "above the ground");
        collectors();
        section("pipes");
        key("pipes.pump_power", "electricity beyond the filter pump; 5 W for each m2 of collector is usual");
        heater();
        money();
        section("control");
        key("control.limit", "here the collectors stop");
        season();
        section("report");
        key("report.units", "metric or us");
        return text.toString();
    }

    private void collectors() {
        section("[collectors]");
        key("collectors.area", "usual black plastic mats; a test certificate is better");
        key("collectors.mounting", "flat, rack, tent, pitched, or gable for both slopes of a pitched roof");
        key("collectors.tilt", "from the horizontal");
        key(
                "collectors.azimuth",
                answers.is(Questions.MOUNTING, "gable")
                        ? "the way one slope faces"
                        : RoofQuestions.tents(answers) ? "the way one side faces" : "the way they face");
        key("collectors.slope_length", "of the pitched roof, each, from eaves to ridge");
        if (!answers.toml("collectors.pitch").isEmpty()) {
            key("collectors.pitch", RoofQuestions.tents(answers) ? "from ridge to ridge" : "from row to row");
            assumed("chord", answers.by("2 m", "6.5 ft"), "length of a rack up the slope");
            assumed("clearance", answers.by("0.3 m", "1 ft"), "lower edge above the roof");
            if (!answers.toml("roof.length").isEmpty()) {
                line("row_length", answers.toml("roof.length"), remarkOf(true, "as long as the roof"));
            }
        }
    }

    private void heater() {
        Heaters heater = Heaters.of(answers);
        if (!heater.heats()) {
            return;
        }
        section("heater");
        key("heater.kind", "boiler, condensing, electric, heat-pump or district-heat");
        key("heater.fuel", "natural-gas, propane, heating-oil or own");
        key(
                "heater.efficiency",
                heater.condenses() ? "with the pool at 30 degC" : "82 %: United States minimum of 2013");
        key("heater.capacity", "heat to the water at full load");
        key("heater.cop", "in air and water of 27 degC");
        key("heater.fuel_co2", "of what is bought; the supplier knows it");
        key("heater.set_point", "the collectors may warm further, up to limit of [control]");
        key("heater.sold_in", "what is bought is told in this unit");
        key("heater.last_bill", "stands beside the simulated amount");
    }

    private void money() {
        if (!HeatQuestions.priced(answers)) {
            return;
        }
        section("prices");
        key("prices.currency", "");
        key("prices.fuel", priceOfFuel());
        key("prices.electricity", "");
        key("prices.collectors", "installed");
        section("money");
        key("money.cover_price", "of the cover that the collectors are compared with");
        key("money.cover_years", "how long that lasts");
        key("money.upkeep", "of the collectors, a year; 1 % of their price is usual");
    }

    /** Only energy that is burned has two heating values. */
    private String priceOfFuel() {
        boolean burned = Heaters.of(answers).burns();
        boolean volume = answers.toml("heater.sold_in").matches("\"(m3|ccf|L|gal)\"");
        return burned && !volume ? "on the higher heating value, as gas is billed" : "of what the heater is fed with";
    }

    private void season() {
        section("season");
        key("season.first_day", "");
        key("season.last_day", "");
        key("season.collectors_before", "days before first_day from which the collectors may run");
        key("season.heater_before", "days before first_day from which the heater may run");
        key("season.open", Questions.STANDARD_TIME);
        key("season.comfort", "from here on the water is warm enough");
        key("season.comfort_maximum", "and above this too warm");
        if (Questions.allYear(answers) && HeatQuestions.heated(answers)) {
            line("start_temperature", answers.toml("heater.set_point"), remarkOf(true, "it is kept warm all year"));
        }
        if (bathers()) {
            section("[schedule]");
            line("what", "\"bathers\"", "the last rule that fits an hour counts");
            line("hours", answers.toml("season.open"), "the hours in which it is open");
            assumed("share", "30 %", "of full, as a mean while it is open");
        }
    }

    private boolean bathers() {
        return !answers.toml("pool.bathers").matches("\"?0*\\.?0*\"?");
    }

    private void section(String name) {
        text.append("\n[").append(name).append("]\n");
    }

    private void key(String id, String remark) {
        answers.of(id)
                .ifPresent(answer ->
                        line(id.substring(id.indexOf('.') + 1), answers.toml(id), remarkOf(answer.assumed(), remark)));
    }

    private void assumed(String key, String value, String remark) {
        line(key, ScenarioAnswer.of("site", "name", value, "").toml(), remarkOf(true, remark));
    }

    private static String remarkOf(boolean assumed, String remark) {
        return !assumed ? remark : remark.isEmpty() ? ASSUMED : ASSUMED + ": " + remark;
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
