package dev.warmlane.roof;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import dev.warmlane.files.BoundedFile;
import dev.warmlane.files.Printable;
import dev.warmlane.units.Range;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Reads the surfaces and obstacles of a roof from a drawing as GeoJSON, in the structure of RFC 7946 but with coordinates
 * that are metres on the roof, x and y of its {@link Surface}, and not degrees of longitude and latitude: a drawing
 * program's own plane. A file that looks like longitude and latitude cannot be told from a small roof; the sizes on the
 * plan show it.
 *
 * <p>A FeatureCollection of features. A Polygon with the property {@code "kind": "surface"} and a number
 * {@code "azimuth"}, degrees, is a surface, with {@code slope} (degrees), {@code height}, {@code parapet} and
 * {@code edge_distance} (m) as it likes; every other Polygon is an obstacle, and every Point one with a
 * {@code diameter} (m); both may have {@code height} and {@code clearance} (m). An obstacle stands on the surface that its
 * first corner or middle lies in. Everything may have a {@code name}; other properties are passed over.
 */
public final class RoofDrawing {

    /** The longest file, MB; own choice. */
    private static final int MEGABYTES = 4;

    /** The most features; own choice. */
    private static final int MOST_FEATURES = 2000;

    private static final int DEEPEST = 40;

    private static final String KIND = "kind";
    private static final String DIAMETER = "diameter";

    private static final Set<String> NUMBERS =
            Set.of("azimuth", "slope", "height", "parapet", "edge_distance", "clearance", DIAMETER);

    private RoofDrawing() {}

    /**
     * The surfaces of a drawing with the obstacles on them.
     *
     * @param file the file
     * @param roofHeightM height above the ground of surfaces that have none of their own, m
     * @throws IOException if it cannot be opened or is longer than 4 MB
     * @throws IllegalArgumentException naming the feature, what is wrong with it and how to mend it
     */
    public static List<Surface> read(Path file, double roofHeightM) throws IOException {
        byte[] bytes = BoundedFile.read(file, MEGABYTES, "a roof drawing");
        return parse(new String(bytes, StandardCharsets.UTF_8), roofHeightM);
    }

    /** The same of a text. */
    static List<Surface> parse(String text, double roofHeightM) {
        List<Feature> features = new ArrayList<>();
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(
                        StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                .build();
        try (JsonParser json = factory.createParser(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            collection(json, features);
        } catch (JsonProcessingException e) {
            // without a place where it is only too deep
            JsonLocation at = e.getLocation();
            throw new IllegalArgumentException("is JSON that ends or breaks"
                    + (at == null ? "" : " at line " + at.getLineNr()) + ": " + Printable.quote(e.getOriginalMessage())
                    + "; export it again as GeoJSON");
        } catch (IOException e) {
            throw new IllegalStateException("text in memory cannot fail to be read", e);
        }
        return surfaces(features, roofHeightM);
    }

    /** A feature as it stands in the file. */
    private static final class Feature {
        private String type = "";
        private final List<List<RoofPoint>> rings = new ArrayList<>();
        private @Nullable RoofPoint point;
        private final Map<String, Double> numbers = new HashMap<>();
        private String name = "";
        private String kind = "";
    }

    private static void collection(JsonParser json, List<Feature> features) throws IOException {
        if (json.nextToken() != JsonToken.START_OBJECT) {
            throw new IllegalArgumentException("is no GeoJSON: it must be one object, a FeatureCollection");
        }
        boolean found = false;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (field.equals("features") && value == JsonToken.START_ARRAY) {
                found = true;
                for (JsonToken item = json.nextToken(); item != JsonToken.END_ARRAY; item = json.nextToken()) {
                    if (item != JsonToken.START_OBJECT) {
                        throw wrong(features.size() + 1, "what is no object", "a Feature");
                    }
                    if (features.size() == MOST_FEATURES) {
                        throw new IllegalArgumentException(
                                "has more than " + MOST_FEATURES + " features; export the roof alone");
                    }
                    features.add(feature(json, features.size() + 1));
                }
            } else {
                json.skipChildren();
            }
        }
        if (!found) {
            throw new IllegalArgumentException(
                    "has no \"features\"; export the drawing as a GeoJSON FeatureCollection");
        }
    }

    private static Feature feature(JsonParser json, int number) throws IOException {
        Feature feature = new Feature();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (field.equals("geometry") && value == JsonToken.START_OBJECT) {
                geometry(json, feature, number);
            } else if (field.equals("properties") && value == JsonToken.START_OBJECT) {
                properties(json, feature, number);
            } else {
                json.skipChildren();
            }
        }
        return feature;
    }

    private static void geometry(JsonParser json, Feature feature, int number) throws IOException {
        List<Object> coordinates = List.of();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (field.equals("type") && value == JsonToken.VALUE_STRING) {
                feature.type = json.getText();
            } else if (field.equals("coordinates") && value == JsonToken.START_ARRAY) {
                coordinates = array(json, number);
            } else {
                json.skipChildren();
            }
        }
        switch (feature.type) {
            case "Point" -> feature.point = point(coordinates, number);
            case "Polygon" -> {
                for (Object ring : coordinates) {
                    feature.rings.add(ring(ring, number));
                }
                if (feature.rings.size() != 1) {
                    throw wrong(
                            number,
                            "a Polygon of " + feature.rings.size() + " rings",
                            "one ring; draw a courtyard or opening as an obstacle of its own");
                }
            }
            default ->
                throw wrong(
                        number,
                        "a geometry of type \"" + Printable.quote(feature.type) + "\"",
                        "Polygon for surfaces and obstacles, Point for round obstacles; leave the rest out of the export");
        }
    }

    /** Numbers and arrays within arrays. */
    private static List<Object> array(JsonParser json, int number) throws IOException {
        List<Object> items = new ArrayList<>();
        for (JsonToken token = json.nextToken(); token != JsonToken.END_ARRAY; token = json.nextToken()) {
            if (token == JsonToken.START_ARRAY) {
                items.add(array(json, number));
            } else if (token.isNumeric()) {
                items.add(json.getDoubleValue());
            } else {
                throw wrong(number, "a coordinate that is no number", "numbers, metres");
            }
        }
        return items;
    }

    private static List<RoofPoint> ring(Object ring, int number) {
        List<RoofPoint> corners = new ArrayList<>();
        if (ring instanceof List<?> points) {
            for (Object point : points) {
                corners.add(point(point, number));
            }
        }
        if (corners.size() < 4 || !corners.get(0).equals(corners.get(corners.size() - 1))) {
            throw wrong(number, "a ring that is not closed", "at least four points, the last the first again");
        }
        return corners.subList(0, corners.size() - 1);
    }

    private static RoofPoint point(Object coordinates, int number) {
        if (coordinates instanceof List<?> list
                && list.size() >= 2
                && list.get(0) instanceof Double x
                && list.get(1) instanceof Double y) {
            return made(number, () -> new RoofPoint(x, y));
        }
        throw wrong(number, "a point without two numbers", "x and y, metres");
    }

    private static void properties(JsonParser json, Feature feature, int number) throws IOException {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (NUMBERS.contains(field) && value != JsonToken.VALUE_NULL) {
                if (!value.isNumeric()) {
                    throw wrong(number, "\"" + field + "\" that is no number", "a number, in metres or degrees");
                }
                feature.numbers.put(field, json.getDoubleValue());
            } else if (field.equals("name") && value == JsonToken.VALUE_STRING) {
                feature.name = Printable.quote(json.getText());
            } else if (field.equals(KIND) && value == JsonToken.VALUE_STRING) {
                feature.kind = json.getText();
            } else {
                json.skipChildren();
            }
        }
    }

    private static List<Surface> surfaces(List<Feature> features, double roofHeightM) {
        List<Surface> surfaces = new ArrayList<>();
        for (int i = 0; i < features.size(); i++) {
            Feature feature = features.get(i);
            if (feature.kind.equals("surface")) {
                surfaces.add(surface(feature, i + 1, surfaces.size() + 1, roofHeightM));
            }
        }
        if (surfaces.isEmpty()) {
            throw new IllegalArgumentException(
                    "has no surface: give the Polygon of the roof's edge the properties \"kind\":"
                            + " \"surface\" and \"azimuth\", degrees");
        }
        Map<String, List<Obstacle>> standing = new HashMap<>();
        for (int i = 0; i < features.size(); i++) {
            Feature feature = features.get(i);
            if (!feature.kind.equals("surface")) {
                int number = i + 1;
                Obstacle obstacle = obstacle(feature, number);
                RoofPoint at = feature.point != null
                        ? feature.point
                        : feature.rings.get(0).get(0);
                Surface on = surfaces.stream()
                        .filter(surface -> surface.outline().holds(at))
                        .findFirst()
                        .orElseThrow(() -> wrong(
                                number, "an obstacle that stands on no surface", "its first corner or middle on one"));
                standing.computeIfAbsent(on.name(), key -> new ArrayList<>()).add(obstacle);
            }
        }
        return surfaces.stream()
                .map(surface -> surface.withObstacles(standing.getOrDefault(surface.name(), List.of())))
                .toList();
    }

    private static Surface surface(Feature feature, int number, int count, double roofHeightM) {
        if (feature.rings.isEmpty()) {
            throw wrong(number, "a surface that is no Polygon", "the Polygon of its edge");
        }
        if (!feature.numbers.containsKey("azimuth")) {
            throw wrong(number, "a surface without \"azimuth\"", "where its reference edge faces, degrees from north");
        }
        return made(
                number,
                () -> new Surface(
                        feature.name.isEmpty() ? "surface " + count : feature.name,
                        new Outline(feature.rings.get(0)),
                        number(feature, "azimuth", 0, Surface.AZIMUTH),
                        number(feature, "slope", Surface.USUAL_SLOPE.value(), Surface.SLOPE),
                        feature.numbers.getOrDefault("height", roofHeightM),
                        number(feature, "parapet", Surface.USUAL_PARAPET.value(), Surface.PARAPET),
                        number(feature, "edge_distance", Surface.USUAL_EDGE_DISTANCE.value(), Surface.EDGE_DISTANCE),
                        List.of()));
    }

    private static Obstacle obstacle(Feature feature, int number) {
        RoofPoint middle = feature.point;
        if (middle != null && !feature.numbers.containsKey(DIAMETER)) {
            throw wrong(number, "a Point without \"diameter\"", "a diameter, metres, or a Polygon");
        }
        return made(
                number,
                () -> new Obstacle(
                        feature.name.isEmpty() ? "obstacle " + number : feature.name,
                        middle != null
                                ? new Obstacle.Disc(middle, number(feature, DIAMETER, 0, Obstacle.DIAMETER))
                                : new Obstacle.Block(new Outline(feature.rings.get(0))),
                        number(feature, "height", Obstacle.USUAL_HEIGHT.value(), Obstacle.HEIGHT),
                        number(feature, "clearance", Obstacle.USUAL_CLEARANCE.value(), Obstacle.CLEARANCE)));
    }

    private static double number(Feature feature, String name, double otherwise, Range range) {
        return range.check(Optional.ofNullable(feature.numbers.get(name)).orElse(otherwise));
    }

    private static <T> T made(int number, Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("feature " + number + ": " + e.getMessage(), e);
        }
    }

    private static IllegalArgumentException wrong(int number, String found, String allowed) {
        return new IllegalArgumentException("feature " + number + ": found " + found + "; allowed: " + allowed);
    }
}
