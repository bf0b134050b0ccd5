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
    /** A mesh where a boat file or a file of readings belongs: {@code looksLike} (its format). */
    FILE_IS_MESH(Severity.ERROR),

    // Floating
    /** Bow or stern lies further off the painted line than wanted: {@code bowOffMm}, {@code
     * sternOffMm} (positive where the water stands above the paint), {@code allowedMm}. */
    OFF_PAINTED_LINE(Severity.WARNING),
    /** She lists more than wanted: {@code listDeg}, {@code allowedDeg}. */
    LIST_BEYOND_TARGET(Severity.WARNING),
    /** The transverse metacentric height is less than wanted: {@code gmMm}, {@code wantedMm}. */
    GM_BELOW_TARGET(Severity.WARNING),
    /** The transverse metacentric height is small, and no target says what is wanted: {@code gmMm}. */
    GM_SMALL(Severity.WARNING),
    /** She does not stay upright but rests at a list on either side: {@code angleDeg}. */
    LOLLS(Severity.WARNING),
    /** There is an attitude of lower energy: {@code heelDeg}, {@code trimDeg}. */
    LOWER_ATTITUDE(Severity.NOTE),
    /** Dived, B lies less above G than wanted: {@code bgMm}, {@code wantedMm}. */
    DIVED_BG_BELOW_TARGET(Severity.WARNING),
    /** Dived, B lies but little above G, and no target says what is wanted: {@code bgMm}. */
    DIVED_BG_SMALL(Severity.WARNING),
    /** Dived she hangs on her side, on end or bottom up: {@code heelDeg}, {@code trimDeg}. */
    DIVED_TURNS_OVER(Severity.WARNING),
    /** Dived she trims more than wanted: {@code trimDeg}, {@code allowedDeg}. */
    DIVED_TRIM_BEYOND_TARGET(Severity.WARNING),
    /** With the tanks full she is heavier than the water she displaces: {@code deficitG}. */
    DIVED_SINKS(Severity.WARNING),
    /** The buoyancy left when dived is not the wanted one: {@code residualG}, {@code leastG}, {@code greatestG}. */
    DIVED_RESIDUAL_OFF_TARGET(Severity.WARNING),

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
    /** Polygons that go through themselves, of which the inside was guessed: {@code count}, {@code polygons}. */
    MESH_POLYGONS_CROSSED(Severity.WARNING),
    /** A polygon of more corners than is cut into triangles: {@code found}, {@code allowed}. */
    MESH_POLYGON_TOO_MANY_CORNERS(Severity.ERROR),
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
    /** More objects put into place than is followed: {@code found}, {@code allowed}. */
    MESH_3MF_TOO_MANY_PLACED(Severity.ERROR),
    /** The file needs an extension of the format that is not read: {@code extension}. */
    MESH_3MF_EXTENSION(Severity.ERROR),
    /** It unpacks to more than is allowed: {@code bytesPacked}, {@code bytesAllowed}. */
    MESH_3MF_UNPACKS_TOO_LARGE(Severity.ERROR),
    /** The unit of the file was turned into one of ours: {@code found}, {@code unit}. */
    MESH_3MF_UNIT_CONVERTED(Severity.NOTE),
    /** Objects that only support the print were left out: {@code count}. */
    MESH_3MF_SUPPORTS_LEFT_OUT(Severity.NOTE),

    // Soundness of meshes. Where several places are listed, each is a finding with its {@code index} from 1 and how
    // many there
    // are in {@code total}; only the first few are listed. Shells count from 1, triangles from 0.
    /**
     * A border of an open surface, the longest first: {@code index}, {@code total}, {@code edges}, {@code lengthMm}, {@code
     * ring} (true when it closes upon itself), and over all borders {@code edgesInAll}, {@code lengthInAllMm}.
     */
    MESH_OPEN_LOOP(Severity.WARNING),
    /** An edge on which more than two triangles meet: {@code index}, {@code total}, {@code triangles}. */
    MESH_EDGE_OF_MANY(Severity.WARNING),
    /** A triangle turned against its neighbours: {@code index}, {@code total}, {@code shell}. */
    MESH_TRIANGLE_FLIPPED(Severity.WARNING),
    /** The surface turns into its own other side, so that nothing is outside: {@code index}, {@code total}, {@code shell}. */
    MESH_ONE_SIDED(Severity.WARNING),
    /**
     * A triangle with the vertices of an earlier one: {@code index}, {@code total}, {@code original}, {@code sameWay} (false
     * when it is turned the other way), {@code sameWayTotal}.
     */
    MESH_TRIANGLE_DUPLICATE(Severity.WARNING),
    /** A triangle that has a vertex twice, and so no area: {@code index}, {@code total}. */
    MESH_TRIANGLE_VERTEX_TWICE(Severity.NOTE),
    /** A triangle whose three vertices lie in a line: {@code index}, {@code total}. */
    MESH_TRIANGLE_WITHOUT_AREA(Severity.NOTE),
    /** More than one shell: {@code shells}, {@code closedShells}. */
    MESH_SEVERAL_SHELLS(Severity.NOTE),
    /** A closed shell that encloses nothing: {@code shell}, {@code areaMm2}, {@code volumeMm3}. */
    MESH_SHELL_FLAT(Severity.WARNING),
    /** A closed shell whose outside is inside: {@code index}, {@code total}, {@code shell}, {@code volumeMm3}. */
    MESH_INSIDE_OUT(Severity.WARNING),
    /**
     * A shell inside another and turned against it, a hollow: {@code index}, {@code total}, {@code shell}, {@code inside},
     * {@code volumeMm3} of the hollow.
     */
    MESH_CAVITY(Severity.NOTE),
    /**
     * A shell inside another and turned like it, whose volume counts twice: {@code index}, {@code total}, {@code shell},
     * {@code inside}, {@code volumeMm3} that is counted twice.
     */
    MESH_COUNTED_TWICE(Severity.WARNING),
    /**
     * Two shells that run into each other: {@code index}, {@code total}, {@code shell}, {@code other}, {@code crossings} (pairs
     * of triangles; 0 where only a point of one was found inside the other).
     */
    MESH_SHELLS_OVERLAP(Severity.WARNING),
    /** Two triangles of one shell that cross: {@code index}, {@code total}, {@code shell}, {@code triangle}, {@code other}. */
    MESH_CROSSES_ITSELF(Severity.WARNING),
    /** Not every pair of near triangles was looked at for crossings: {@code pairsTested}, {@code pairs}. */
    MESH_CROSSINGS_SAMPLED(Severity.NOTE),
    /** So many closed shells in each other that not every one was looked at for what it lies in: {@code shells}, {@code lookedAt}. */
    MESH_NESTING_SAMPLED(Severity.WARNING),
    /**
     * A size that no model has: {@code longestMm}, {@code leastMm}, {@code mostMm}; the units that would make a model of it
     * in {@code units}, and how long she then is in {@code lengthsMm}, in the same order.
     */
    MESH_SIZE_IMPLAUSIBLE(Severity.WARNING),
    /** Too large to be looked through unasked for pieces that overlap: {@code triangles}, {@code greatest}. */
    MESH_NOT_LOOKED_THROUGH(Severity.NOTE),
    /**
     * The build needs a closed, oriented surface: {@code build}, {@code closed}, {@code oriented}; {@code openings} and how long they are around, {@code
     * borderMm}; {@code turned}, edges at which neighbours disagree; {@code many}, edges of more than two triangles; each missing where there are none. Where
     * openings are all that is wrong, {@code flatMm3} that it would enclose with flat lids, and {@code leastMm3} and {@code mostMm3} with domes in or
     * out, half a ball on a round opening.
     */
    MESH_BUILD_NEEDS_CLOSED(Severity.ERROR),
    /**
     * Declared as an outer surface, but looks like a wall with two surfaces: {@code build}, {@code wallMm}, {@code sign} ({@code
     * volume}, {@code nested} or {@code rays}); where two nested shells told {@code shell}, {@code inside}; where rays told
     * {@code raysOnWall}, {@code rays}.
     */
    MESH_LOOKS_LIKE_WALL(Severity.WARNING),
    /** Declared as printed plastic, but looks like an outer surface alone: {@code build}, {@code wallMm} as it would be. */
    MESH_LOOKS_LIKE_OUTER_SURFACE(Severity.WARNING),
    /**
     * An open skin whose outside looks at its own middle, so that its thickness would be laid on the wrong side: {@code build},
     * {@code inwardPercent} (share that looks inward).
     */
    MESH_SKIN_LOOKS_INSIDE_OUT(Severity.WARNING),
    /** A shell is asked for that the mesh does not have: {@code found}, {@code shells}. */
    MESH_SHELL_MISSING(Severity.ERROR),

    // Repair of meshes, as asked for: what was changed.
    /** Triangles that had a vertex twice were left out: {@code count}. */
    REPAIR_VERTEX_TWICE_DROPPED(Severity.NOTE),
    /**
     * Copies of triangles were left out: {@code count}; of these the originals of {@code pairsOfNoThickness} pairs that lay back to
     * back between two bodies.
     */
    REPAIR_DUPLICATES_DROPPED(Severity.NOTE),
    /** Triangles were turned to agree with their neighbours: {@code count}; {@code edgesLeft} over which none can agree. */
    REPAIR_TRIANGLES_TURNED(Severity.NOTE),
    /** Triangles without area were done away with: {@code count}; {@code left} that could not be. */
    REPAIR_FLAT_TRIANGLES_MENDED(Severity.NOTE),
    /** A hole was closed: {@code index}, {@code total}, {@code edges}, {@code sizeMm}, {@code areaMm2} of the lid. */
    REPAIR_HOLE_CLOSED(Severity.NOTE),
    /**
     * A closed shell was turned: {@code index}, {@code total}, {@code shell} and {@code inside} (the shell around it, or 0), by
     * their numbers in the mended mesh; {@code volumeMm3} as it is now, negative for a hollow.
     */
    REPAIR_SHELL_TURNED(Severity.NOTE),

    // Reading a boat file. Places are JSON pointers; `line` (the line of the value, from 1) is among the values
    // wherever the
    // value stands in the file; `found` is the value as it is written, cut short when long.
    /** More bytes than a boat file may have: {@code foundBytes}, {@code greatestBytes}. */
    JSON_TOO_LARGE(Severity.ERROR),
    /** Bytes that are no UTF-8 text: {@code allowed}. */
    JSON_NOT_UTF8(Severity.ERROR),
    /** No JSON: {@code column} (from 1), {@code reason} (in the parser's words). */
    JSON_SYNTAX(Severity.ERROR),
    /** Text after the end of the document: {@code column}, {@code found}. */
    JSON_TRAILING_TEXT(Severity.ERROR),
    /** Objects and arrays nested too deep: {@code greatestDepth}. */
    JSON_TOO_DEEP(Severity.ERROR),
    /** So many values, or keys so long, that no boat can be meant: {@code greatest} (letters of all pointers to values). */
    JSON_TOO_INTRICATE(Severity.ERROR),
    /** A key that the object has already: {@code key}, {@code firstLine}. */
    JSON_DUPLICATE_KEY(Severity.ERROR),
    /** No version: {@code allowed} (list). */
    VERSION_MISSING(Severity.ERROR),
    /** Written by a newer program: {@code found}, {@code greatest}. Nothing else has been looked at. */
    VERSION_NEWER(Severity.ERROR),
    /** No version that ever was: {@code found}, {@code allowed} (list). */
    VERSION_UNKNOWN(Severity.ERROR),
    /** {@code key}, {@code nearest} (the known key that it probably stands for, if any), {@code allowed} (list of keys). */
    UNKNOWN_KEY(Severity.ERROR),
    /** {@code key}; {@code needsOneOf} (list of keys) where one of several would do. */
    KEY_MISSING(Severity.ERROR),
    /** A key that other kinds of part take: {@code key}, {@code kind}, {@code kinds} (list of those that take it). */
    KEY_NOT_FOR_KIND(Severity.ERROR),
    /** A key that hulls of another build take: {@code key}, {@code build}, {@code builds} (list of those that take it). */
    KEY_NOT_FOR_BUILD(Severity.ERROR),
    /** A key that means nothing without another: {@code key}, {@code needs} (list of keys). */
    KEY_NEEDS_KEY(Severity.ERROR),
    /** Keys that contradict each other: {@code found} (list of keys). */
    KEYS_EXCLUDE(Severity.ERROR),
    /**
     * A value of the wrong type: {@code found}, {@code foundType} and {@code allowedType} (object, array, string, number,
     * whole number, boolean, null).
     */
    WRONG_TYPE(Severity.ERROR),
    /** An array of the wrong length: {@code key}, {@code found} (its length), {@code least}, {@code greatest} (if limited). */
    WRONG_LENGTH(Severity.ERROR),
    /**
     * {@code key} (carries the unit), {@code found}, the lower limit as {@code least} (allowed itself) or {@code above} (not
     * allowed itself), {@code greatest}.
     */
    NUMBER_OUT_OF_RANGE(Severity.ERROR),
    /** {@code key}, {@code found}, {@code nearest} (if any), {@code allowed} (list of words). */
    WORD_NOT_ALLOWED(Severity.ERROR),
    /** A text of no letters: {@code key}. */
    TEXT_EMPTY(Severity.ERROR),
    /** An id that another part, or another zone, has: {@code found}, {@code firstAt} (its JSON pointer). */
    ID_DUPLICATE(Severity.ERROR),
    /** A boat of no parts. */
    NO_PARTS(Severity.ERROR),
    /** {@code kind}, {@code allowed} (list of the keys that make a shape). */
    SHAPE_MISSING(Severity.ERROR),
    /** More than one shape: {@code found} (list of keys), {@code allowed} (list of the keys that make one shape). */
    SHAPE_AMBIGUOUS(Severity.ERROR),
    /** A box without thickness: {@code found}, {@code axes} (list of x, y, z). */
    BOX_FLAT(Severity.ERROR),
    /** A bar with both ends in one place: {@code found}. */
    BAR_WITHOUT_LENGTH(Severity.ERROR),
    /** A bar with round ends, thicker than long: {@code foundMm}, {@code greatestMm}. */
    BAR_ROUNDER_THAN_LONG(Severity.ERROR),
    /** A part without a mass or what it is computed from: {@code kind}, {@code needsOneOf} (list of keys). */
    MASS_MISSING(Severity.ERROR),
    /** {@code found}, {@code nearest} (if any), {@code allowed} (list of ids). */
    INSIDE_UNKNOWN(Severity.ERROR),
    /** A container that lets water in: {@code found}, its {@code kind}, {@code kinds} (list), {@code allowed} (list of ids). */
    INSIDE_NOT_WATERTIGHT(Severity.ERROR),
    /** A part inside itself: {@code found}. */
    INSIDE_ITSELF(Severity.ERROR),
    /** Parts inside each other: {@code found}, {@code ring} (list of ids). */
    INSIDE_IN_A_RING(Severity.ERROR),
    /**
     * A mirrored part in a container that has no twin and lies to one side: {@code found} (its id), {@code fromYMm},
     * {@code toYMm}.
     */
    INSIDE_WITHOUT_TWIN(Severity.ERROR),
    /** {@code forward}, {@code up}. */
    IMPORT_AXES_PARALLEL(Severity.ERROR),
    /** {@code found}, {@code rule} (what is allowed). */
    MESH_PATH_NOT_ALLOWED(Severity.ERROR),
    /** {@code found}, {@code lookedFor} (path), {@code nearest} (a file there of such a name, if any). */
    MESH_FILE_MISSING(Severity.ERROR),
    /** Points that span no water plane: {@code found}. */
    PAINTED_LINE_NO_PLANE(Severity.ERROR),
    /** A band whose least value is above its greatest: {@code leastG}, {@code greatestG}. */
    BAND_REVERSED(Severity.ERROR),
    /** Every part weighs nothing. */
    NO_MASS(Severity.ERROR),
    /** A surface whose triangles do not agree which side is outside, so that a skin lies partly outward: {@code found}. */
    SURFACE_NOT_ORIENTED(Severity.WARNING),
    /** A target that lets her sink for good: {@code leastG}, {@code greatestG}. */
    RESIDUAL_MAY_SINK(Severity.WARNING),
    /** The unit given here is not the one that the mesh file states: {@code unit}, {@code fileUnit}. */
    UNIT_OVERRIDES_FILE(Severity.NOTE),
    /**
     * {@code foundGPerCm3}, {@code kind}, {@code usualFromGPerCm3}, {@code usualToGPerCm3}, {@code ifKgPerM3ThenGPerCm3}
     * (where that would be usual).
     */
    DENSITY_DOUBTFUL(Severity.WARNING),
    /** Weighed and computed mass far apart; the weighed one counts: {@code weighedG}, {@code computedG}. */
    MASS_DOUBTFUL(Severity.WARNING),
    /** The hull is not longest along x: {@code sizeXMm}, {@code sizeYMm}, {@code sizeZMm}. */
    HULL_AXES_DOUBTFUL(Severity.NOTE),
    /** The hull is very small or large: {@code longestMm}, {@code usualFromMm}, {@code usualToMm}. */
    HULL_SIZE_DOUBTFUL(Severity.WARNING),
    /** The painted line passes over or under the hull: {@code lineMm}, {@code hullFromMm}, {@code hullToMm}. */
    PAINTED_LINE_MISSES_HULL(Severity.WARNING),

    // Whether parts fit. Volumes of mirrored parts are of both pieces; resolutionCm3 is the volume of one of the
    // columns
    // that a volume is summed over: what is smaller can be missed.
    /** Parts in one place: {@code kind}, {@code otherKind}, {@code volumeCm3}, {@code resolutionCm3}. */
    PARTS_OVERLAP(Severity.WARNING),
    /**
     * A part lies in a cylinder or sealed hull without being said to be inside, so that it displaces twice: {@code kind},
     * {@code otherKind} (of the container, the second of the place), {@code volumeCm3}, {@code resolutionCm3}.
     */
    INSIDE_NOT_STATED(Severity.WARNING),
    /**
     * A part sticks out of the one it stands inside: {@code kind}, {@code otherKind} (of the container, the second of the
     * place), {@code volumeCm3} (sticking out), {@code resolutionCm3}.
     */
    STICKS_OUT(Severity.WARNING),
    /** A compact piece whose centre is not in its container, the second of the place: {@code centreMm} (x, y, z). */
    CENTRE_OUTSIDE_CONTAINER(Severity.WARNING),
    /** A centre of mass outside the box around its part: {@code centreMm} (x, y, z). */
    CENTRE_OUTSIDE_PART(Severity.WARNING),
    /**
     * A part outside the hull, which for a fitting is only a note: {@code kind}, {@code volumeCm3} (outside), {@code ofCm3} (the
     * whole part), {@code resolutionCm3}. Of a printed hull only the box around it is known to end her.
     */
    OUTSIDE_HULL(Severity.WARNING),

    // Saving
    /** The file is there already and was left alone. */
    FILE_EXISTS(Severity.ERROR),
    /** The folder to save to is not there: {@code folder}. */
    FOLDER_MISSING(Severity.ERROR),
    /** {@code reason}. */
    FILE_NOT_WRITTEN(Severity.ERROR),
    /** A mesh was copied to where the boat was saved: {@code from}. */
    MESH_COPIED(Severity.NOTE),
    /** Where the boat is to be saved lies another mesh of the name of hers, which was left alone: {@code from}. */
    MESH_OTHER_THERE(Severity.ERROR),

    // What the command line changes
    /** {@code found}, {@code allowed} (list of words), {@code leastGPerCm3}, {@code greatestGPerCm3}. */
    WATER_NOT_UNDERSTOOD(Severity.ERROR),
    /** Not of the form ID=F: {@code found}. */
    FILL_NOT_UNDERSTOOD(Severity.ERROR),
    /** No tank of that id: {@code found}, {@code nearest} (one with such a name, if any), {@code allowed} (list of ids). */
    FILL_OF_NO_TANK(Severity.ERROR),
    /** {@code tank}, {@code found}, {@code least}, {@code greatest}. */
    FILL_OUT_OF_RANGE(Severity.ERROR),
    /** The same tank more than once: {@code tank}. */
    FILL_TWICE(Severity.ERROR),

    // Pictures and plots
    /** The machine has no fonts, so that nothing can be lettered: {@code reason}. */
    FONTS_MISSING(Severity.ERROR),
    /** The name ends in no format that can be written: {@code found} (ending), {@code allowed} (list of endings). */
    PICTURE_FORMAT_UNKNOWN(Severity.ERROR),

    /** A plot was asked for, and there is nothing to draw. */
    PLOT_NOTHING(Severity.WARNING),

    // The dive
    /** No part of the boat is a tank. */
    DIVE_NO_TANK(Severity.ERROR),
    /** The plan of the dive lets no water in or out. */
    DIVE_MOVES_NO_WATER(Severity.ERROR),
    /** Too heavy to float before any water is let in: {@code deficitG}. */
    SINKS_SURFACED(Severity.WARNING),
    /** Too heavy to float from a fill on: {@code fillPercent}. */
    SINKS_ON_THE_WAY(Severity.WARNING),
    /** She does not stand upright within a range of fills: {@code fromPercent}, {@code toPercent}, {@code angleDeg}. */
    UPRIGHT_UNSTABLE(Severity.WARNING),
    /** She goes over at once: {@code fillPercent}, list and trim before ({@code fromHeelDeg}, {@code fromTrimDeg}) and after
     * ({@code toHeelDeg}, {@code toTrimDeg}). */
    FALLS_OVER(Severity.WARNING),
    /** Listed by {@code heelDeg} she goes over from one trim to another: {@code fromTrimDeg}, {@code toTrimDeg}. */
    TRIM_JUMPS(Severity.WARNING),

    /** A free-flooding hull has openings, so that it is not known what water it encloses. */
    DRAINING_HULL_OPEN(Severity.ERROR),
    /** No hull floods freely, so that no water stays standing in one. */
    DRAINING_NO_HULL(Severity.WARNING),
    /** Fills on the command line that a dive does not use: {@code found} (list). */
    DIVE_FILLS_UNUSED(Severity.NOTE),

    // The pool test
    /** How far a reading may be off, in a unit that the reading has not: {@code key}, {@code quantity}, {@code allowed}. */
    POOL_ERROR_IN_OTHER_UNIT(Severity.ERROR),
    /** Read at the painted line of a boat that has none. */
    POOL_NO_LINE(Severity.ERROR),
    /** A point for a quantity that is read at none: {@code key}, {@code quantity}. */
    POOL_POINT_UNUSED(Severity.ERROR),
    /** In the state of a reading she sinks by {@code deficitG}, so that nothing afloat can be read: {@code reading}; her margins explain {@code marginG}. */
    POOL_READING_SINKS(Severity.ERROR),
    /** She does not sink in the state of a reading, so that nothing hangs on the scale: {@code reading}, {@code liftG}, {@code marginG}. */
    POOL_NOTHING_HANGS(Severity.ERROR),
    /** At the list {@code foundDeg} of a reading she has no righting lever to compare: {@code reading}. */
    POOL_NO_LEVER(Severity.ERROR),
    /**
     * The one reading that all others speak against: {@code reading}, {@code quantity}, {@code times} its error. What was found and what the others say, by unit: {@code foundMm}, {@code foundDeg},
     * {@code foundG}, {@code foundS}, {@code othersMm}, {@code othersDeg}, {@code othersG}, {@code othersS}.
     */
    POOL_OUTLIER(Severity.WARNING),
    /** One of several readings that do not fit: {@code reading}, {@code quantity}, {@code found}, {@code times} its error. */
    POOL_SUSPECT(Severity.WARNING),
    /** The reading that does not fit would, were it {@code meant} otherwise: {@code reading}, {@code quantity}, {@code found}. */
    POOL_MIXED_UP(Severity.NOTE),
    /** An angle of {@code foundDeg} that boats under test seldom show: {@code reading}, {@code quantity}. */
    POOL_LARGE_ANGLE(Severity.WARNING),
    /** Readings are further from each other than their errors allow: {@code chiSquare}, {@code count}, {@code chancePercent}; in one case of a hundred chance goes beyond {@code limit}. */
    POOL_CONTRADICTION(Severity.WARNING),
    /** The readings agree, but with another boat than that of the file: {@code chiSquare}, {@code count}, {@code chancePercent}, {@code limit}. */
    POOL_FILE_OFF(Severity.WARNING),
    /** The least squares found no rest: the readings are too far from any boat like that of the file. */
    POOL_NOT_SETTLED(Severity.WARNING),

    // The ballast plan and the seat
    /** There is no painted line to plan for. */
    PLAN_WITHOUT_LINE(Severity.ERROR),
    /** There is no zone in which lead or foam may go, and no hull in which one could be found. */
    PLAN_WITHOUT_ZONES(Severity.ERROR),
    /** There is no zone, and none can be found since a hull is an open surface. */
    PLAN_ZONES_OPEN_HULL(Severity.ERROR),
    /** The file gives no zones; these were found in the hull: {@code zones} (list of ids). */
    ZONES_FOUND(Severity.NOTE),
    /** A zone for foam in a watertight part, where foam displaces nothing: {@code part}. */
    ZONE_FOAM_KEPT_DRY(Severity.WARNING),
    /** Lead or foam that is not fixed, but of a shape of which nothing can be taken out, only all of it. */
    LOOSE_ONLY_WHOLE(Severity.NOTE),
    /** There are zones for one of the two only: {@code missing} (the use that no zone is for). */
    PLAN_ONE_MATERIAL(Severity.NOTE),
    /** Nothing fits into the zone: {@code wholeCm3}, {@code takenBy} (ids of parts that reach into it). */
    ZONE_WITHOUT_ROOM(Severity.WARNING),
    /** Little of the zone is free: {@code freeCm3}, {@code wholeCm3}, {@code takenBy} (ids of parts that reach into it). */
    ZONE_HARDLY_FREE(Severity.NOTE),
    /** The hull is open, so where its inside ends is not known and the zone was taken as given. */
    ZONE_TAKEN_AS_GIVEN(Severity.NOTE),
    /** Least above greatest: {@code aim}, {@code leastG}, {@code greatestG}. */
    AIM_BAND_REVERSED(Severity.ERROR),
    /** An aim that is negative, zero where it must not be, or no number: {@code aim}, {@code found}. */
    AIM_OUT_OF_RANGE(Severity.ERROR),
    /** No lead or foam of that id that could be taken out: {@code found}, {@code allowed} (list of ids). */
    NOT_REMOVABLE(Severity.ERROR),
    /** No part of that id that could be moved: {@code found}, {@code allowed} (list of ids). */
    NOT_MOVABLE(Severity.ERROR),
    /** A part was moved along within limits, and at none of the places tried does it fit and is there a plan: {@code id}, {@code fromMm}, {@code toMm} (positive forward). */
    MOVE_WITHOUT_PLAN(Severity.WARNING),
    /** She sinks as she is, so there is no line and no dive to keep. */
    NOTHING_TO_KEEP(Severity.ERROR),
    /** A boat without a cylinder that is a round bar lying along x. */
    NO_CYLINDER_TO_SEAT(Severity.ERROR),
    /** A boat without a hull for the cylinder to lie in. */
    NO_HULL_TO_SEAT_IN(Severity.ERROR),
    /** A cylinder that does not lie along x: {@code part}. */
    CYLINDER_NOT_ALONG(Severity.NOTE);

    private final Severity severity;

    Code(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }
}
