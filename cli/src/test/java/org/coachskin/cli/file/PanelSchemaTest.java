package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.units.Dimension;
import org.coachskin.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** An editor that knows the schema says what the reader says. */
class PanelSchemaTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String TEXT = read();

    private static final JsonNode TREE = JSON.readTree(TEXT);

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(TEXT, InputFormat.JSON);

    private static String read() {
        try (InputStream in =
                Objects.requireNonNull(
                        PanelFile.class.getResourceAsStream("panel-file.schema.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> complaints(String yaml) {
        Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return SCHEMA.validate(JSON.writeValueAsString(tree), InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    static List<Path> panelFiles() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String folder :
                List.of("../examples/panels", "src/main/resources/org/coachskin/cli/new")) {
            try (Stream<Path> all = Files.list(Path.of(folder))) {
                all.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(files::add);
            }
        }
        return files;
    }

    @ParameterizedTest
    @MethodSource("panelFiles")
    void everyExampleFollowsTheSchemaAndIsRead(Path file) throws IOException {
        assertEquals(List.of(), complaints(Files.readString(file)));
        assertFalse(PanelFile.read(file).jobs().isEmpty());
    }

    @Test
    void theReaderAndTheSchemaKnowTheSameKeys() {
        Map<String, List<String>> reader = new HashMap<>();
        reader.put("", PanelReader.KNOWN);
        reader.put("variant", PanelReader.VARIANT);
        reader.put("crown", PanelReader.CROWN);
        reader.put("ownFoam", FoamSection.KEYS);
        reader.put("foam", plus(FoamSection.KEYS, "thickness"));
        reader.put("limits", LimitSection.KEYS);
        reader.put("factors", LimitSection.FACTORS);
        reader.put("ownFibre", MaterialSection.FIBRE);
        reader.put("ownCloth", MaterialSection.CLOTH);
        reader.put("ownResin", MaterialSection.RESIN);
        reader.put("ownPly", PlySection.KEYS);
        reader.put("ownLoad", LoadSection.OWN);
        List<String> loads =
                new ArrayList<>(
                        EverydayLoads.known().stream().map(EverydayLoads.Named::name).toList());
        loads.addAll(LoadSection.SPREAD);
        reader.put("loadMap", loads);
        reader.put("opening", GroundSection.OPENING);
        reader.put("zone", ZoneSection.KEYS);
        reader.put("lip", ZoneSection.LIP);
        reader.put("turned", Tape.EDGES);

        reader.forEach(
                (name, keys) -> {
                    JsonNode node = name.isEmpty() ? TREE : TREE.path("$defs").path(name);
                    assertEquals(
                            new TreeSet<>(keys),
                            new TreeSet<>(node.path("properties").propertyNames()),
                            name);
                });
        assertEquals(new TreeSet<>(LoadSection.PRESS), keysOf("press", "anyOf", 1));
        assertEquals(new TreeSet<>(PlyList.PLY), keysOf("ply", "anyOf", 1));
        assertEquals(new TreeSet<>(PlaceSection.TAPE), keysOf("place", "anyOf", 1));
        assertEquals(new TreeSet<>(Tape.EDGES), keysOf("held", "anyOf", 1));
        Set<Set<String>> fittings = new HashSet<>();
        FittingSection.THINGS.forEach(
                (thing, keys) -> fittings.add(new TreeSet<>(plus(keys, thing))));
        Set<Set<String>> inSchema = new HashSet<>();
        for (int i = 0; i < TREE.path("$defs").path("fitting").path("anyOf").size(); i++) {
            inSchema.add(keysOf("fitting", "anyOf", i));
        }
        assertEquals(fittings, inSchema);
        List<String> words = new ArrayList<>();
        TREE.path("$defs")
                .path("thing")
                .path("anyOf")
                .path(0)
                .path("enum")
                .forEach(word -> words.add(word.asString()));
        assertEquals(ReadyMade.words(), words);
        List<String> skins = new ArrayList<>();
        TREE.path("$defs")
                .path("turnedSkin")
                .path("anyOf")
                .path(0)
                .path("enum")
                .forEach(word -> skins.add(word.asString()));
        assertEquals(TurnedSection.WORDS, skins);
    }

    private static Set<String> keysOf(String def, String choice, int index) {
        return new TreeSet<>(
                TREE.path("$defs")
                        .path(def)
                        .path(choice)
                        .path(index)
                        .path("properties")
                        .propertyNames());
    }

    private static List<String> plus(List<String> keys, String key) {
        List<String> all = new ArrayList<>(keys);
        all.add(key);
        return all;
    }

    @ParameterizedTest
    @EnumSource(
            value = Dimension.class,
            names = {"SHARE", "RATIO", "TIME"},
            mode = EnumSource.Mode.EXCLUDE)
    void theSchemaKnowsEveryUnitOfTheReader(Dimension dimension) {
        String def = camel(dimension.name());
        String pattern = TREE.path("$defs").path(def).path("pattern").asString();

        for (Unit unit : Unit.of(dimension)) {
            for (String way : ways(unit.symbol())) {
                assertTrue(("12.5 " + way).matches(pattern), def + " " + way);
                assertEquals(Optional.of(unit), Unit.of(dimension, way));
            }
        }
        assertFalse("12.5".matches(pattern));
        assertFalse("12.5 bananas".matches(pattern));
        assertFalse(("12,5 " + Unit.of(dimension).get(0).symbol()).matches(pattern));
    }

    /** A unit as it stands in the table, and as people write its powers and degrees. */
    private static List<String> ways(String symbol) {
        String raised = symbol.replace("^2", "²").replace("^3", "³").replace("deg", "°");
        return List.of(
                symbol, symbol.matches("deg[CF]") || !raised.contains("°") ? raised : symbol);
    }

    private static String camel(String name) {
        StringBuilder camel = new StringBuilder();
        for (String word : name.toLowerCase(Locale.ROOT).split("_", -1)) {
            camel.append(
                    camel.isEmpty()
                            ? word
                            : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return camel.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "loads: {leaning: {line: rear edge, force: 300 N per m, people: yes}}",
                "loads: {strap: {line: [{from left: 0 mm, from front: 1 mm}, {from left: 2 mm, from front: 1 mm}], force: 2 lbf/in}}",
                "turned: {all edges: inside, rear edge: raw, window: [outside, inside]}",
            })
    void whatTheReaderTakesTheSchemaTakes(String line) {
        assertEquals(
                List.of(),
                complaints(
                        """
                        width: 900 mm
                        length: 600 mm
                        resin: epoxy
                        outside: [twill glass 300 g/m^2]
                        held: all edges
                        """
                                + line
                                + "\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "width: 900",
                "width: 900 kg",
                "width: 900,5 mm",
                "resin:",
                "held: everywhere",
                "held: {front edge: hinge}",
                "held: {front: hinges}",
                "held: [{hinge: front edge}]",
                "held: [{hinge: front edge, at: 150 mm}]",
                "held: [{latch: rear edge, at: middle, pad: 40}]",
                "held: [{rest: middle}]",
                "held: [{rubber seal: all edges, force: 50 N}]",
                "openings: [{shape: ellipse 80 mm}]",
                "openings: [{shape: circle 80, centre: {from left: 1 m, from front: 1 m}}]",
                "openings: [{shape: 80 mm x 60 mm, centre: {from left: 1 m}}]",
                "zones: [{round: vent, width: 50}]",
                "zones: [{at: top, width: 50 mm}]",
                "lip: {plies: 4 x twill glass 300 g/m^2}",
                "lip: {width: 30 mm, flush: middle}",
                "corner radius: 80",
                "outline: [{from left: 0 mm, from front: 0 mm}]",
                "outside: []",
                "outsid: [twill glass 300 g/m^2]",
                "loads: [plam]",
                "loads: {wind: 110}",
                "loads: {palm: {at: centre}}",
                "loads: {hand: {force: 100 N}}",
                "loads: {hand: {line: rear edge}}",
                "loads: {hand: {line: rear edge, force: 100 N}}",
                "loads: {hand: {line: all edges, force: 100 N per m}}",
                "loads: {hand: {line: rear edge, force: 100 N per m, at: middle}}",
                "loads: {hand: {patch: 80 mm x 60 mm, force: 100 N per m}}",
                "turned: inside",
                "turned: {all edges: middle}",
                "turned: {window: []}",
                "limits: {felt stiffness: 40}",
                "glass share: 52",
                "variants: {a: {variants: {}}}",
                "my cloths: {house: {mass: 300}}",
            })
    void whatTheReaderRefusesTheSchemaRefuses(String line) {
        String good =
                """
                width: 900 mm
                length: 600 mm
                resin: epoxy
                outside: [twill glass 300 g/m^2]
                held: all edges
                """;
        String key = line.substring(0, line.indexOf(':'));

        assertEquals(List.of(), complaints(good));
        assertFalse(
                complaints(good.replaceFirst("(?m)^" + key + ":.*\\n", "") + line + "\n")
                        .isEmpty());
    }
}
