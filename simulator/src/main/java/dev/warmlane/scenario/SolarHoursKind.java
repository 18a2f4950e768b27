package dev.warmlane.scenario;

import dev.warmlane.units.Quantity;
import dev.warmlane.units.UnitSystem;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The hours of solar time in which rows must not shade each other: around noon, or noon alone. */
record SolarHoursKind() implements Kind<SolarHoursKind.SolarHours> {

    private static final Pattern SPAN = Pattern.compile("(\\d{1,2}(?:\\.\\d+)?)\\s*-\\s*(\\d{1,2}(?:\\.\\d+)?)");

    /**
     * Hours of solar time.
     *
     * @param from first
     * @param to last, at or after the first
     */
    record SolarHours(double from, double to) {
        static final SolarHours NOON = new SolarHours(12, 12);
    }

    @Override
    public SolarHours read(Object toml) throws BadValueException {
        if ("noon".equals(toml)) {
            return SolarHours.NOON;
        }
        Matcher matcher = SPAN.matcher(toml instanceof String text ? text.strip() : "");
        if (matcher.matches()) {
            double from = Double.parseDouble(matcher.group(1));
            double to = Double.parseDouble(matcher.group(2));
            if (from <= to && to <= 24) {
                return new SolarHours(from, to);
            }
        }
        throw BadValueException.of(toml, allowed());
    }

    @Override
    public String write(SolarHours value) {
        return value.equals(SolarHours.NOON)
                ? "\"noon\""
                : "\"" + Quantity.plain(value.from()) + "-" + Quantity.plain(value.to()) + "\"";
    }

    @Override
    public String show(SolarHours value, UnitSystem units) {
        return value.equals(SolarHours.NOON)
                ? "noon"
                : Quantity.plain(value.from()) + " to " + Quantity.plain(value.to()) + " h solar time";
    }

    @Override
    public String allowed() {
        return "\"noon\", or hours of solar time, such as \"9-15\"";
    }

    @Override
    public SolarHours standIn() {
        return SolarHours.NOON;
    }
}
