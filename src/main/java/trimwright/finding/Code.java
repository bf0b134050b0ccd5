package trimwright.finding;

/**
 * Every kind of finding that the program can make, with its usual severity. The name of the code is what scripts see;
 * its wording lives in {@code trimwright.report.Wording}.
 */
public enum Code {
    // Files
    /** There is no file of that name. */
    FILE_MISSING(Severity.ERROR),
    /** The name is that of a directory. */
    FILE_IS_DIRECTORY(Severity.ERROR),
    /** The file cannot be read; {@code reason}. */
    FILE_UNREADABLE(Severity.ERROR),
    /** The file holds nothing. */
    FILE_EMPTY(Severity.ERROR),

    // Reading meshes. Coordinates are in the unit of the file; triangles and vertices count from 0, lines from 1.
    /** No mesh format that is read: {@code found} (its first bytes), {@code looksLike} (may be missing), {@code allowed}. */
    MESH_FORMAT_UNKNOWN(Severity.ERROR),
    /**
     * Binary STL that ends too early: {@code trianglesStated}, {@code trianglesWhole}, {@code bytesExpected}, {@code
     * bytesFound}.
     */
    MESH_STL_TRUNCATED(Severity.ERROR),
    /**
     * Binary STL longer than its count says: {@code trianglesStated}, {@code bytesExpected}, {@code bytesFound}, {@code
     * trianglesFitting} (missing where no whole number fits).
     */
    MESH_STL_WRONG_COUNT(Severity.ERROR),
    /** More triangles than can be handled: {@code found}, {@code allowed}. */
    MESH_TOO_MANY_TRIANGLES(Severity.ERROR),
    /** The mesh does not fit into the memory that Java may use: {@code fileBytes}, {@code memoryBytes}. */
    MESH_OUT_OF_MEMORY(Severity.ERROR),
    /** The file is a mesh, but without a triangle. */
    MESH_NO_TRIANGLES(Severity.ERROR),
    /** Not-a-number or infinity: the first one {@code found}, its {@code triangle} or {@code vertex}, {@code count}. */
    MESH_COORDINATE_NOT_FINITE(Severity.ERROR),
    /** The first one {@code found}, {@code allowed} (either sign), its {@code triangle} or {@code vertex}, {@code count}. */
    MESH_COORDINATE_TOO_LARGE(Severity.ERROR),
    /** Text that does not belong there: {@code found}, {@code expected}. */
    MESH_TEXT_UNEXPECTED(Severity.ERROR),
    /** The text ends too early: {@code expected}. */
    MESH_TEXT_ENDS_EARLY(Severity.ERROR),
    /** Numbers with a decimal comma: the first one {@code found}, {@code expected} in its stead, {@code count}. */
    MESH_DECIMAL_COMMA(Severity.ERROR),
    /** A face names a vertex that the file does not have: {@code found}, {@code vertices}. */
    MESH_VERTEX_MISSING(Severity.ERROR),
    /** Further findings of one kind that are not listed: {@code code}, {@code count}. */
    MESH_MORE_OF_THE_SAME(Severity.ERROR),
    /**
     * So far from the origin that single precision blurs the shape: {@code distance}, {@code longestSide}, {@code step}
     * (distance between neighbouring single-precision numbers there).
     */
    MESH_FAR_FROM_ORIGIN(Severity.WARNING),
    /**
     * Polygons with corners out of their plane, at the worst: {@code count}, {@code polygons}, {@code largestGap}, {@code
     * tolerance}.
     */
    MESH_POLYGONS_NOT_PLANAR(Severity.NOTE),
    /** Points, lines or curved surfaces of an OBJ file were left out: the first {@code keyword}, {@code count}. */
    MESH_ELEMENTS_LEFT_OUT(Severity.WARNING),
    /** A zip file without a 3D model in it. */
    MESH_3MF_NO_MODEL(Severity.ERROR),
    /** The zip file is damaged: {@code reason}. */
    MESH_3MF_ZIP_BROKEN(Severity.ERROR),
    /** Not well-formed XML, or with a document type, which is refused: {@code reason}. */
    MESH_3MF_XML_BROKEN(Severity.ERROR),
    /** A wrong or missing attribute: {@code element}, {@code attribute}, {@code found}, {@code allowed}. */
    MESH_3MF_ATTRIBUTE(Severity.ERROR),
    /** An object that is named but not there: {@code object}. */
    MESH_3MF_OBJECT_MISSING(Severity.ERROR),
    /** An object that is a component of itself: {@code object}. */
    MESH_3MF_OBJECT_IN_ITSELF(Severity.ERROR),
    /** Components within components without end: {@code object}, levels {@code allowed}. */
    MESH_3MF_NESTED_TOO_DEEP(Severity.ERROR),
    /** The file needs an extension of the format that is not read: {@code extension}. */
    MESH_3MF_EXTENSION(Severity.ERROR),
    /** It unpacks to more than is allowed: {@code bytesPacked}, {@code bytesAllowed}. */
    MESH_3MF_UNPACKS_TOO_LARGE(Severity.ERROR),
    /** The unit of the file was turned into one of ours: {@code found}, {@code unit}. */
    MESH_3MF_UNIT_CONVERTED(Severity.NOTE),
    /** Objects that only support the print were left out: {@code count}. */
    MESH_3MF_SUPPORTS_LEFT_OUT(Severity.NOTE);

    private final Severity severity;

    Code(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }
}
