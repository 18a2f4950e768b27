package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.money.Terms;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.Prices;
import dev.warmlane.site.Roof;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What an owner who reads the first sheet with a pen in the hand would stumble over. */
class OwnersSheetTest {

    private static final String N = "([0-9,]+)";

    /** What stands with the collectors and without, and what is told of their difference. */
    private static final List<Pattern[]> SPARED = List.of(
            spared(
                    "(?:burned|bought)[^.]*? " + N + " (?:kWh|therms) " + N + " (?:kWh|therms) (?:of it|Carbon)",
                    "displaced: " + N + " (?:kWh|therms) \\("),
            spared(
                    "Carbon dioxide of that [a-z ]+? " + N + " (?:kg|lb) " + N,
                    "which gives " + N + " (?:kg|lb) of carbon"),
            spared(
                    "Heat of the heater " + N + " (?:kWh|therms) " + N,
                    "that the collectors deliver " + N + " (?:kWh|therms) spare"));

    private static final Pattern MONEY =
            Pattern.compile("costs \\$?" + N + "(?: EUR)? a season, without collectors \\$?" + N
                    + "(?: EUR)?; pumping costs \\$?" + N + "(?: EUR)?; saved: \\$?" + N);

    private static Pattern[] spared(String both, String difference) {
        return new Pattern[] {Pattern.compile(both), Pattern.compile(difference)};
    }

    private static final Installation BUILT = SampleForecasts.MUNICIPAL.installation();

    private static final Pattern MEANS = Pattern.compile(
            "averages ([0-9.]+) °[CF].*?([0-9.]+) degrees (warmer|colder).*?\\(([0-9.]+) °[CF] without collectors\\)");

    private static final Pattern GAINED = Pattern.compile("The collectors (?:warm|cool) the pool by ([0-9.]+) degrees");

    private static Subject subject(UnaryOperator<Installation.Builder> change, UnitSystem units) {
        return Subject.of(
                SampleForecasts.municipal(change.apply(BUILT.toBuilder()).build()),
                new ReportSettings("A pool", units));
    }

    /** The words of the first sheet. */
    private static String sheet(Subject subject) {
        String page = SampleReports.page(SampleReports.report(subject));
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"))
                .replaceAll("(?s)<svg.*?</svg>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&#39;", "'")
                .replaceAll("\\s+", " ");
    }

    private static String text(Subject subject) {
        return TextWriter.full(SampleReports.report(subject)).replaceAll("\\s+", " ");
    }

    /** Who divides what is paid by what is saved a year finds a shorter time. */
    @Test
    void paybackSaysWhetherInterestIsInIt() {
        assertThat(sheet(SampleReports.MUNICIPAL))
                .containsPattern("paid back in [0-9.]+ years with interest of 3 %")
                .containsPattern("until they are paid back [0-9.]+ to [0-9.]+ years with interest of 3 %");

        Subject without = subject(
                built -> built.offer(new Offer(0, 0, 0, new Terms(0, 0, 20), CoverOffer.USUAL)), UnitSystem.METRIC);
        assertThat(sheet(without)).contains("paid back").doesNotContain("with interest");
    }

    /** Both are set to what is wanted; only the larger reaches it by itself, so that the other's days are the collectors'. */
    @Test
    void daysAtComfortAreToldWhereTheHeaterIsTooSmallToHoldThem() {
        double comfortC = BUILT.comfortC();
        Subject large =
                subject(built -> built.heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 250, comfortC)), UnitSystem.METRIC);
        Subject small =
                subject(built -> built.heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 20, comfortC)), UnitSystem.METRIC);
        int days = small.season().comfort().daysAtComfort();

        assertThat(small.season().comfortWithout().daysAtComfort()).isLessThan(days);
        assertThat(text(small)).contains(days + " days").doesNotContain("days at comfort say nothing");
        assertThat(text(large)).contains("days at comfort say nothing");
    }

    @Test
    void moreAreaIsNotSoldForARoofThatIsFull() {
        double limit = 336; // 80 % of 30 m by 14 m
        Subject full =
                subject(built -> built.arrays(List.of(BUILT.arrays().get(0).withAreaM2(limit))), UnitSystem.METRIC);

        assertThat(text(full))
                .contains("The roof has no room for more collectors")
                .doesNotContain("More area would");
        assertThat(text(SampleReports.MUNICIPAL))
                .contains("More area would add")
                .doesNotContain("has no room for more");
    }

    /** More would stand idle: nobody is told to buy it. */
    @Test
    void moreAreaIsNotSoldWhereItIsTooMuchAlready() {
        Subject large = subject(
                built -> built.arrays(List.of(BUILT.arrays().get(0).withAreaM2(800)))
                        .roof(Roof.builder(60, 40, 6).build()),
                UnitSystem.METRIC);

        assertThat(text(large))
                .contains("The area is large for this pool", "Less may do")
                .doesNotContain("More area would");
    }

    @Test
    void aPumpThatNobodyGaveIsNotPassedOver() {
        Subject free = subject(built -> built.pipes(new Pipes(BUILT.pipes().heatLossWK(), 0)), UnitSystem.METRIC);

        assertThat(sheet(free)).contains("no electricity counted for pumping");
        assertThat(sheet(SampleReports.MUNICIPAL))
                .contains("after paying for the pump's electricity")
                .doesNotContain("no electricity counted");

        Subject unpaid = subject(built -> built.prices(new Prices("EUR", 0.09, 0, 140)), UnitSystem.METRIC);
        assertThat(sheet(unpaid))
                .contains("the pump's electricity costs nothing")
                .doesNotContain("no electricity counted");
    }

    /** An opponent has the bill in his hand. */
    @Test
    void aBillThatIsFarFromTheModelIsToldAtTheHead() {
        String told = "Without collectors this model comes to 0.50 of the last bill";
        double kwh =
                SampleReports.MUNICIPAL.season().gas().displaced().orElseThrow().burnedWithoutKwh();

        assertThat(brief(billed(2 * kwh))).contains(told);
        assertThat(brief(billed(1.2 * kwh))).doesNotContain("of the last bill");
    }

    private static Subject billed(double kwh) {
        return subject(built -> built.lastBill(new Bill(kwh, SaleUnit.KWH, OptionalDouble.empty())), UnitSystem.METRIC);
    }

    private static String brief(Subject subject) {
        return TextWriter.brief(SampleReports.report(subject)).replaceAll("\\s+", " ");
    }

    @Test
    void propaneByTheGallonIsToldByTheGallonAndByItsName() {
        Subject propane = subject(
                built -> built.heater(new Boiler(Fuel.PROPANE.soldIn(SaleUnit.GALLON), 0.85, 250, 23)), UnitSystem.US);

        assertThat(sheet(propane))
                .containsPattern("[0-9,]+ gal propane displaced [0-9,]+ to [0-9,]+ about [0-9,]+ therms;")
                .doesNotContain("gas displaced", "of the gas");
    }

    /** Take one shown temperature from the other and the shown gain comes out; the club's are °F. */
    @Test
    void gainIsTheDifferenceOfWhatStandsBesideIt() {
        for (Map.Entry<String, Subject> one : SampleReports.usual().entrySet()) {
            String said = text(one.getValue());
            Matcher means = MEANS.matcher(said);
            Matcher gained = GAINED.matcher(said);

            assertThat(means.find()).as(one.getKey()).isTrue();
            assertThat(gained.find()).as(one.getKey()).isTrue();
            BigDecimal apart = new BigDecimal(means.group(1)).subtract(new BigDecimal(means.group(4)));
            assertThat(new BigDecimal(means.group(2))).as(one.getKey()).isEqualByComparingTo(apart.abs());
            assertThat(new BigDecimal(gained.group(1))).as(one.getKey()).isEqualByComparingTo(apart.abs());
        }
    }

    /** Numbers whose rounded difference is another than the difference of what is rounded: 10.6 - 5.4 = 5.2, 11 - 5 = 6. */
    @Test
    void aDifferenceIsThatOfTheNumbersShown() {
        Numbers metric = new Numbers(UnitSystem.METRIC);
        Numbers us = new Numbers(UnitSystem.US);

        assertThat(metric.show(Measure.HEAT, metric.apart(Measure.HEAT, 10.6, 5.4)))
                .isEqualTo("6 kWh");
        assertThat(metric.apart(Measure.HEAT, 5.4, 10.6)).isEqualTo(-6);
        // a therm is 29.3071 kWh
        assertThat(us.show(Measure.HEAT, us.apart(Measure.HEAT, 10.6 * 29.3071, 5.4 * 29.3071)))
                .isEqualTo("6 therms");
        assertThat(metric.apart(Measure.MONEY, 100.5, 99.4)).isEqualTo(2);
    }

    /** On every page that shows both: gas, its carbon, the heater's heat and the money of a season. */
    @Test
    void whatIsSparedIsTheDifferenceOfWhatIsShown() {
        int shown = 0;
        for (Map.Entry<String, Subject> one : SampleReports.usual().entrySet()) {
            String said = text(one.getValue()).replace('\u00a0', ' ');
            for (Pattern[] each : SPARED) {
                Matcher both = each[0].matcher(said);
                Matcher difference = each[1].matcher(said);
                if (both.find() && difference.find()) {
                    shown++;
                    assertThat(number(difference.group(1)))
                            .as(one.getKey() + ": " + both.group() + "; " + difference.group())
                            .isEqualTo(number(both.group(2)) - number(both.group(1)));
                }
            }
            Matcher money = MONEY.matcher(said);
            if (money.find()) {
                shown++;
                assertThat(number(money.group(4)))
                        .as(one.getKey() + ": " + money.group())
                        .isEqualTo(number(money.group(2)) - number(money.group(1)) - number(money.group(3)));
            }
        }
        assertThat(shown).isGreaterThan(8);
    }

    private static long number(String shown) {
        return Long.parseLong(shown.replace(",", ""));
    }

    @Test
    void noTwoColumnsOfTheMonthsAreCalledAlike() {
        for (Subject subject : SampleReports.usual().values()) {
            assertThat(ForecastTables.months(subject.forecast(), subject.numbers())
                            .columns())
                    .extracting(column -> column.header().strip())
                    .doesNotHaveDuplicates();
        }
    }
}
