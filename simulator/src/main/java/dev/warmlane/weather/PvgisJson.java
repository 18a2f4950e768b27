package dev.warmlane.weather;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import dev.warmlane.site.Site;
import dev.warmlane.units.Units;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * PVGIS typical year as JSON: the place in {@code inputs.location}, a record for each hour in {@code outputs.tmy_hourly},
 * in UTC. What it means is as in the csv of the same year. Places in messages are records counted from 1, because such a
 * file is often a single line. The parsing library is known here and nowhere else.
 */
final class PvgisJson implements WeatherFormat {

    private static final String LOCATION = "inputs/location/";
    private static final String HOURS = "outputs/tmy_hourly";
    private static final String STAMP = "time(UTC)";
    private static final Pattern TIME = Pattern.compile("(\\d{4})(\\d{2})(\\d{2}):(\\d{2})00");
    private static final String FETCH = "Fetch the typical year again, as JSON or csv.";

    /** More than a year of hours and few enough to hold. */
    private static final int RECORDS_AT_MOST = 10_000;

    private record Quantity(WeatherColumn column, double scale) {}

    private static final Map<String, Quantity> QUANTITIES = Map.of(
            "T2m", new Quantity(WeatherColumn.AIR, 1),
            "RH", new Quantity(WeatherColumn.RELATIVE_HUMIDITY, 1),
            "G(h)", new Quantity(WeatherColumn.GLOBAL, 1),
            "Gb(n)", new Quantity(WeatherColumn.DIRECT, 1),
            "Gd(h)", new Quantity(WeatherColumn.DIFFUSE, 1),
            "IR(h)", new Quantity(WeatherColumn.LONG_WAVE, 1),
            "WS10m", new Quantity(WeatherColumn.WIND, 1),
            "SP", new Quantity(WeatherColumn.PRESSURE, Units.PASCAL));

    private record Hour(String stamp, Map<WeatherColumn, Double> values) {}

    @Override
    public String title() {
        return "PVGIS TMY json";
    }

    @Override
    public boolean recognises(FileText text) {
        return text.isJson();
    }

    @Override
    public RawWeather read(FileText text) throws WeatherFileException {
        Map<String, Double> location = new HashMap<>();
        List<Hour> hours = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(text.whole())) {
            gather(text, json, location, hours);
        } catch (JsonProcessingException e) {
            throw text.error(
                    0,
                    "",
                    "JSON that ends or breaks: " + e.getOriginalMessage(),
                    "a whole JSON file",
                    "It was cut off or edited: fetch it again.");
        } catch (WeatherFileException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalStateException("text in memory cannot fail to be read", e);
        }
        if (hours.isEmpty()) {
            throw text.error(
                    0,
                    "",
                    "JSON without the hours of a PVGIS typical year, " + HOURS,
                    "that list of hours",
                    "Fetch the typical year of PVGIS, or other weather, as csv.");
        }
        return raw(text, location, hours);
    }

    private static void gather(FileText text, JsonParser json, Map<String, Double> location, List<Hour> hours)
            throws IOException {
        Deque<String> path = new ArrayDeque<>();
        String name = "";
        for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
            switch (token) {
                case FIELD_NAME -> name = json.currentName();
                case START_OBJECT, START_ARRAY -> {
                    String at = path.isEmpty() ? "" : path.peekLast() + name;
                    if (token == JsonToken.START_ARRAY && at.equals(HOURS)) {
                        hours(text, json, hours);
                    } else {
                        path.addLast(at.isEmpty() ? "" : at + "/");
                        name = "";
                    }
                }
                case END_OBJECT, END_ARRAY -> path.removeLast();
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                    if (LOCATION.equals(path.peekLast())) {
                        location.put(name, json.getDoubleValue());
                    }
                }
                default -> {}
            }
        }
    }

    private static void hours(FileText text, JsonParser json, List<Hour> hours) throws IOException {
        while (json.nextToken() == JsonToken.START_OBJECT) {
            if (hours.size() == RECORDS_AT_MOST) {
                throw text.error(
                        0, HOURS, "more than " + RECORDS_AT_MOST + " records", "8760, one for every hour", FETCH);
            }
            String stamp = "";
            Map<WeatherColumn, Double> values = new HashMap<>();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                JsonToken value = json.nextToken();
                Quantity quantity = QUANTITIES.get(name);
                if (value.isNumeric() && quantity != null) {
                    values.put(quantity.column, json.getDoubleValue() * quantity.scale);
                } else if (name.equals(STAMP) && value == JsonToken.VALUE_STRING) {
                    stamp = json.getText();
                } else if (value != JsonToken.VALUE_NULL && quantity != null) {
                    throw text.error(
                            0,
                            "record " + (hours.size() + 1) + ", " + name,
                            "\"" + json.getText() + "\"",
                            "a number",
                            FETCH);
                } else {
                    json.skipChildren();
                }
            }
            hours.add(new Hour(stamp, values));
        }
    }

    private RawWeather raw(FileText text, Map<String, Double> location, List<Hour> hours) throws WeatherFileException {
        double latitude = place(text, location.get("latitude"), "latitude");
        double longitude = place(text, location.get("longitude"), "longitude");
        Double offset = location.get("irradiance_time_offset");
        Site site =
                Headers.site(text, 0, "", latitude, longitude, place(text, location.get("elevation"), "elevation"), 0);
        RawHeader header = new RawHeader(
                title(),
                site,
                0,
                RawHeader.Clock.UTC,
                true,
                offset == null ? 0 : Headers.centre(text, 0, "irradiance_time_offset", offset),
                offset != null,
                0,
                WeatherYear.LongWaveOrigin.FILE);
        RawWeather raw = new RawWeather(text, header, hours.size());
        QUANTITIES.values().forEach(quantity -> raw.declare(quantity.column));
        raw.note("lines that are named here are records of " + HOURS + ", counted from 1");
        for (int i = 0; i < hours.size(); i++) {
            Matcher time = TIME.matcher(hours.get(i).stamp);
            if (!time.matches()) {
                throw text.error(
                        0,
                        "record " + (i + 1) + ", " + STAMP,
                        "\"" + hours.get(i).stamp + "\"",
                        "a full hour as YYYYMMDD:HH00",
                        "Correct the stamp.");
            }
            raw.add(
                    i + 1,
                    Integer.parseInt(time.group(1)),
                    Integer.parseInt(time.group(2)),
                    Integer.parseInt(time.group(3)),
                    Integer.parseInt(time.group(4)));
            hours.get(i).values.forEach(raw::set);
        }
        return raw;
    }

    private static double place(FileText text, @Nullable Double value, String key) throws WeatherFileException {
        if (value == null) {
            throw text.error(0, LOCATION + key, "no such number", "the place", FETCH);
        }
        return value;
    }
}
