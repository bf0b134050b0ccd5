package trimwright.mesh;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import trimwright.finding.Code;
import trimwright.finding.Finding;
import trimwright.finding.Place;
import trimwright.finding.UnusableInputException;

/** Reads the XML parts of a 3MF package, element by element, without ever holding a part as a whole. */
final class ThreeMfXml {

    private static final String MODEL_RELATION = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";

    /** Extensions that a file may require: the one that is read, and one that only colours. */
    private static final Set<String> EXTENSIONS = Set.of(
            "http://schemas.microsoft.com/3dmanufacturing/production/2015/06",
            "http://schemas.microsoft.com/3dmanufacturing/material/2015/02");

    /** A model needs six levels; each open element takes memory. */
    private static final int DEEPEST = 100;

    private static final int SHOWN = 40;
    private static final double[] IDENTITY = {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0};
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern DECIMAL_LETTERS = Pattern.compile("[-+.0-9eE]+");

    private final String part;
    private final Problems problems;
    private XMLStreamReader xml;

    /** @param part how findings name the part */
    ThreeMfXml(String part, Problems problems) {
        this.part = part;
        this.problems = problems;
    }

    /** The entry that the relationships of a package name as its 3D model, if any. */
    static Optional<String> rootTarget(InputStream in, String place) throws XMLStreamException {
        XMLStreamReader xml = open(in);
        while (xml.hasNext()) {
            int event = next(xml, place);
            if (event == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("Relationship")
                    && MODEL_RELATION.equals(xml.getAttributeValue(null, "Type"))) {
                return Optional.ofNullable(xml.getAttributeValue(null, "Target"))
                        .map(ThreeMfXml::entryName);
            }
        }
        return Optional.empty();
    }

    static UnusableInputException broken(XMLStreamException e, String place) {
        long line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
        String message = e.getNestedException() instanceof CharacterCodingException
                ? "not UTF-8"
                : String.valueOf(e.getMessage());
        // The parser puts the place, which is told anyway, on a line before the message.
        String reason =
                message.substring(message.lastIndexOf("Message: ") < 0 ? 0 : message.lastIndexOf("Message: ") + 9);
        String words = FileHead.printable(reason, 200).replaceAll("\\.+$", "");
        return new UnusableInputException(
                Finding.of(Code.MESH_3MF_XML_BROKEN, new Place.AtLine(place, line), "reason", words));
    }

    ThreeMfModel readModel(InputStream in) throws XMLStreamException {
        xml = open(in);
        ThreeMfModel model = new ThreeMfModel();
        ThreeMfModel.Item item = null;
        int depth = 0;
        while (xml.hasNext()) {
            int event = next(xml, part);
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (++depth > DEEPEST) {
                throw refused(part, xml, "elements within elements, deeper than " + DEEPEST);
            }
            switch (xml.getLocalName()) {
                case "model" -> readHead(model);
                case "object" -> item = readObject(model);
                case "vertex" -> readVertex(item);
                case "triangle" -> readTriangle(item);
                case "component" -> {
                    if (item != null) {
                        item.components().add(readUse(model));
                    }
                }
                case "item" -> model.build().add(readUse(model));
                default -> {
                    // Names, colours and materials do not change the shape; an extension that does is refused in the
                    // head.
                }
            }
        }
        problems.throwIfAny();
        model.objects().values().forEach(object -> object.mesh().dropUnusedVertices());
        return model;
    }

    private static XMLStreamReader open(InputStream in) throws XMLStreamException {
        // The parser of the JDK, whatever else is on the path: its limits and switches are known.
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        // The parser's own decoder tells standard error of bytes that are no text.
        return factory.createXMLStreamReader(decoded(in));
    }

    /** The text of a part, which the format lets be UTF-8 or UTF-16. */
    private static Reader decoded(InputStream in) throws XMLStreamException {
        BufferedInputStream buffered = new BufferedInputStream(in);
        try {
            buffered.mark(3);
            int mark = buffered.read() << 8 | buffered.read();
            boolean wide = mark == 0xFEFF || mark == 0xFFFE;
            // The decoder of UTF-16 takes its mark away by itself, that of UTF-8 does not.
            if (mark != 0xEFBB || buffered.read() != 0xBF) {
                buffered.reset();
            }
            // Made so, a decoder refuses what is no text instead of putting a sign in its place.
            return new InputStreamReader(
                    buffered, (wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8).newDecoder());
        } catch (IOException e) {
            throw new XMLStreamException(e);
        }
    }

    /** The next event; a document type is refused. */
    private static int next(XMLStreamReader xml, String place) throws XMLStreamException {
        int event;
        try {
            event = xml.next();
        } catch (UnusableInputException e) {
            throw e;
        } catch (RuntimeException e) {
            // On some broken documents the parser of the JDK breaks itself, say for want of a message of its own.
            throw new XMLStreamException(String.valueOf(e.getMessage()), xml.getLocation(), e);
        }
        if (event == XMLStreamConstants.DTD) {
            throw refused(place, xml, "DOCTYPE");
        }
        return event;
    }

    private static UnusableInputException refused(String place, XMLStreamReader xml, String reason) {
        long line = Math.max(1, xml.getLocation().getLineNumber());
        return new UnusableInputException(
                Finding.of(Code.MESH_3MF_XML_BROKEN, new Place.AtLine(place, line), "reason", reason));
    }

    private void readHead(ThreeMfModel model) {
        String unit = xml.getAttributeValue(null, "unit");
        if (unit != null) {
            Arrays.stream(ThreeMfModel.Unit.values())
                    .filter(u -> u.written().equals(unit))
                    .findFirst()
                    .ifPresentOrElse(
                            model::setUnit,
                            () -> wrong(
                                    "unit",
                                    Arrays.toString(ThreeMfModel.Unit.values()).toLowerCase(Locale.ROOT)));
        }
        String required = xml.getAttributeValue(null, "requiredextensions");
        if (required == null || required.isBlank()) {
            return;
        }
        for (String prefix : BLANKS.split(required.strip())) {
            String namespace = xml.getNamespaceURI(prefix);
            if (namespace == null || !EXTENSIONS.contains(namespace)) {
                problems.add(Code.MESH_3MF_EXTENSION, here(), "extension", namespace == null ? prefix : namespace);
            }
        }
    }

    private ThreeMfModel.Item readObject(ThreeMfModel model) {
        String type = xml.getAttributeValue(null, "type");
        ThreeMfModel.Item item = new ThreeMfModel.Item("support".equals(type) || "solidsupport".equals(type));
        model.objects().put(integer("id"), item);
        return item;
    }

    private void readVertex(ThreeMfModel.Item item) {
        if (item == null) {
            return;
        }
        MeshBuilder mesh = item.mesh();
        double x = coordinate("x", mesh.vertexCount());
        double y = coordinate("y", mesh.vertexCount());
        double z = coordinate("z", mesh.vertexCount());
        mesh.addVertex(x, y, z);
    }

    private void readTriangle(ThreeMfModel.Item item) {
        if (item == null) {
            return;
        }
        MeshBuilder mesh = item.mesh();
        for (String name : new String[] {"v1", "v2", "v3"}) {
            int vertex = integer(name);
            if (vertex >= mesh.vertexCount()) {
                problems.add(Code.MESH_VERTEX_MISSING, here(), "found", (long) vertex, "vertices", mesh.vertexCount());
            }
            mesh.corners().add(vertex);
        }
        mesh.checkSize(problems, here());
    }

    private ThreeMfModel.Use readUse(ThreeMfModel model) {
        Optional<String> otherPart =
                Optional.ofNullable(xml.getAttributeValue(null, "path")).map(ThreeMfXml::entryName);
        otherPart.ifPresent(model.neededParts()::add);
        return new ThreeMfModel.Use(otherPart, integer("objectid"), transform(), here());
    }

    private double[] transform() {
        String written = xml.getAttributeValue(null, "transform");
        if (written == null) {
            return IDENTITY;
        }
        String[] words = BLANKS.split(written.strip());
        double[] matrix = new double[IDENTITY.length];
        boolean good = words.length == matrix.length;
        for (int i = 0; good && i < matrix.length; i++) {
            OptionalDouble number = number(words[i]);
            good = number.isPresent() && Math.abs(number.getAsDouble()) <= MeshFiles.LARGEST_COORDINATE;
            matrix[i] = number.orElse(0);
        }
        if (!good || ThreeMfAssembly.determinant(matrix) == 0) {
            wrong("transform", "12 numbers, invertible");
            return IDENTITY;
        }
        return matrix;
    }

    /** The coordinate, or zero after a complaint. */
    private double coordinate(String name, int vertex) {
        String written = xml.getAttributeValue(null, name);
        OptionalDouble number = number(written);
        if (number.isEmpty()) {
            if (written != null && NumberWords.hasDecimalComma(written)) {
                problems.tally(
                        Code.MESH_DECIMAL_COMMA, here(), "found", written, "expected", written.replace(',', '.'));
            } else if (written != null && NumberWords.isNotFinite(written)) {
                problems.badCoordinate(Double.NaN, here(), "vertex", vertex);
            } else {
                wrong(name, "number");
            }
            return 0;
        }
        double value = number.getAsDouble();
        if (Math.abs(value) > MeshFiles.LARGEST_COORDINATE) {
            problems.badCoordinate(value, here(), "vertex", vertex);
        }
        return value;
    }

    private static OptionalDouble number(String written) {
        if (written == null || !DECIMAL_LETTERS.matcher(written).matches()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(written));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** A whole number from 0, or zero after a complaint. */
    private int integer(String name) {
        String written = xml.getAttributeValue(null, name);
        try {
            int value = written == null ? -1 : Integer.parseInt(written);
            if (value >= 0) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Told below, as a negative one is.
        }
        wrong(name, "whole number from 0");
        return 0;
    }

    private void wrong(String attribute, String allowed) {
        String found = xml.getAttributeValue(null, attribute);
        problems.add(
                Code.MESH_3MF_ATTRIBUTE,
                here(),
                "element",
                xml.getLocalName(),
                "attribute",
                attribute,
                "found",
                found == null ? "" : FileHead.printable(found, SHOWN),
                "allowed",
                allowed);
    }

    /** Part names start with a slash, zip entries do not. */
    private static String entryName(String partName) {
        return partName.startsWith("/") ? partName.substring(1) : partName;
    }

    private Place here() {
        return new Place.AtLine(part, Math.max(1, xml.getLocation().getLineNumber()));
    }
}
