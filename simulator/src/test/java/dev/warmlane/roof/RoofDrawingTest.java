package dev.warmlane.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings in the structure of RFC 7946, in metres. Invented. */
class RoofDrawingTest {

    private static final String SQUARE = "[[[0,0],[10,0],[10,8],[0,8],[0,0]]]";

    @TempDir
    private Path folder;

    private static String feature(String geometry, String properties) {
        return "{\"type\":\"Feature\",\"geometry\":{" + geometry + "},\"properties\":{" + properties + "}}";
    }

    private static String polygon(String coordinates, String properties) {
        return feature("\"type\":\"Polygon\",\"coordinates\":" + coordinates, properties);
    }

    private static String collection(String... features) {
        return "{\"type\":\"FeatureCollection\",\"bbox\":[0,0,1,1],\"features\":[" + String.join(",", features) + "]}";
    }

    @Test
    void surfacesAndWhatStandsOnThem() throws IOException {
        String text = collection(
                polygon(
                        SQUARE,
                        "\"kind\":\"surface\",\"name\":\"hall\",\"azimuth\":200,\"edge_distance\":0.7,\"layer\":{\"a\":[1]}"),
                polygon(
                        "[[[20,0],[30,0],[30,8],[20,8],[20,0]]]",
                        "\"kind\":\"surface\",\"azimuth\":90,\"slope\":30,\"height\":9,\"parapet\":0.2"),
                polygon("[[[3,3],[4,3],[4,4],[3,4],[3,3]]]", "\"name\":\"light\",\"height\":0.4"),
                feature("\"type\":\"Point\",\"coordinates\":[25,4,0]", "\"diameter\":0.5,\"clearance\":0.1"));
        Path file = Files.writeString(folder.resolve("roof.geojson"), text);

        List<Surface> surfaces = RoofDrawing.read(file, 6);

        assertThat(surfaces)
                .containsExactly(
                        new Surface(
                                "hall",
                                Outline.rectangle(10, 8),
                                200,
                                0,
                                6,
                                0,
                                0.7,
                                List.of(new Obstacle(
                                        "light",
                                        new Obstacle.Block(Outline.rectangle(new RoofPoint(3, 3), 1, 1)),
                                        0.4,
                                        0.3))),
                        new Surface(
                                "surface 2",
                                Outline.rectangle(new RoofPoint(20, 0), 10, 8),
                                90,
                                30,
                                9,
                                0.2,
                                1,
                                List.of(new Obstacle(
                                        "obstacle 4", new Obstacle.Disc(new RoofPoint(25, 4), 0.5), 0, 0.1))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "[]|is no GeoJSON: it must be one object, a FeatureCollection",
                "{\"type\":\"x\"}|has no \"features\"; export the drawing as a GeoJSON FeatureCollection",
                "{\"features\":[{|is JSON that ends or breaks at line 1",
                "{\"features\":[[]]}|feature 1: found what is no object; allowed: a Feature",
                "{\"features\":[]}|has no surface: give the Polygon of the roof's edge",
                "{\"features\":[{\"geometry\":{\"type\":\"LineString\",\"coordinates\":[]}}]}|feature 1: found a geometry of"
                        + " type \"LineString\"; allowed: Polygon",
                "{\"features\":[{\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[1,1]]]}}]}|feature 1:"
                        + " found a ring that is not closed",
                "{\"features\":[{\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,\"a\"]]]}}]}|feature 1: found a"
                        + " coordinate that is no number",
                "{\"features\":[{\"geometry\":{\"type\":\"Point\",\"coordinates\":[1]}}]}|feature 1: found a point without two"
                        + " numbers",
                "{\"features\":[{\"geometry\":{\"type\":\"Point\",\"coordinates\":[5000,1]}}]}|feature 1: coordinate on the"
                        + " roof must be -1000 to 1000 m, was 5000",
                "{\"features\":[{\"properties\":{\"slope\":\"flat\"}}]}|feature 1: found \"slope\" that is no number",
            })
    void refusesAndSaysHowToMend(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(text, 6))
                .withMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"kind\":\"surface\"|feature 1: found a surface without \"azimuth\"",
                "\"kind\":\"surface\",\"azimuth\":400|feature 1: azimuth of the roof surface must be 0 to 360 deg, was 400",
                "\"kind\":\"surface\",\"azimuth\":1,\"height\":1|feature 1: roof height must be 2 to 200 m, was 1",
            })
    void refusesSurfaces(String properties, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(collection(polygon(SQUARE, properties)), 6))
                .withMessageContaining(message);
    }

    @Test
    void refusesObstaclesThatStandNowhere() {
        String surface = polygon(SQUARE, "\"kind\":\"surface\",\"azimuth\":180");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(
                        collection(surface, feature("\"type\":\"Point\",\"coordinates\":[20,1]", "\"diameter\":1")), 6))
                .withMessageContaining("feature 2: found an obstacle that stands on no surface");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(
                        collection(surface, feature("\"type\":\"Point\",\"coordinates\":[2,1]", "")), 6))
                .withMessageContaining("feature 2: found a Point without \"diameter\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(
                        collection(polygon("[[[0,0],[9,9],[9,0],[0,9],[0,0]]]", "\"kind\":\"surface\",\"azimuth\":1")),
                        6))
                .withMessageContaining("cross or touch each other");
    }

    @Test
    void refusesWhatIsTooLongTooManyOrTooDeep() throws IOException {
        Path long_ = Files.write(folder.resolve("long.geojson"), new byte[4 * 1024 * 1024 + 1]);
        assertThatThrownBy(() -> RoofDrawing.read(long_, 6)).hasMessageContaining("has more than 4 MB");
        String many = polygon(SQUARE, "") + ",";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse(collection(many.repeat(2000) + polygon(SQUARE, "")), 6))
                .withMessageContaining("has more than 2000 features");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoofDrawing.parse("{\"features\":[{\"properties\":{\"a\":" + "[".repeat(10_000), 6))
                .withMessageContaining("ends or breaks");
    }
}
