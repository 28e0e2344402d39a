package baysheet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The jar as it is shipped leaves out parts of its libraries. Nothing that is kept may miss them:
 * the references of all its classes are read here, and the build runs the commands, the layouts'
 * limits and the checks of the PDF files once more with this jar in place of the libraries.
 */
class PackedJarIT {
  private static final String JAR = System.getProperty("packed.jar", "target/baysheet.jar");

  /** Names in the jar that belong to us or to the libraries in it. */
  private static final List<String> PACKED =
      List.of(
          "baysheet/",
          "freemarker/",
          "org/apache/pdfbox/",
          "org/apache/fontbox/",
          "org/apache/commons/logging/",
          "org/yaml/snakeyaml/",
          "picocli/",
          "com/fasterxml/jackson/");

  /** A class in the type of a field or method: {@code (Ljava/lang/String;I)V}. */
  private static final Pattern TYPE = Pattern.compile("L([a-z]+/[A-Za-z0-9_/$]+);");

  /** Classes that name one that is left out, in code that the tool cannot reach. */
  private static final Map<String, Set<String>> NEVER_REACHED =
      Map.of(
          // The resolver that lets a template load most classes; ours lets it load none.
          "freemarker/core/TemplateClassResolver$2",
          Set.of(
              "freemarker/template/utility/Execute",
              "freemarker/template/utility/ObjectConstructor"),
          // Options for writing YAML; only their names of styles are used.
          "org/yaml/snakeyaml/DumperOptions",
          Set.of(
              "org/yaml/snakeyaml/emitter/Emitter",
              "org/yaml/snakeyaml/serializer/AnchorGenerator",
              "org/yaml/snakeyaml/serializer/NumberAnchorGenerator"),
          // A picture of a signature.
          "org/apache/pdfbox/pdmodel/interactive/digitalsignature/SignatureOptions",
          Set.of(
              "org/apache/pdfbox/pdmodel/interactive/digitalsignature/visible/PDVisibleSigProperties"));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "freemarker/template/utility/Execute.class",
        "freemarker/template/utility/ObjectConstructor.class",
        "freemarker/template/utility/JythonRuntime.class",
        "freemarker/ext/jython/JythonWrapper.class",
        "freemarker/ext/rhino/RhinoWrapper.class",
        "freemarker/ext/jsp/TaglibFactory.class",
        "freemarker/ext/servlet/FreemarkerServlet.class",
        "freemarker/debug/impl/DebuggerServer.class",
        "org/yaml/snakeyaml/constructor/Constructor.class",
        "org/apache/pdfbox/pdmodel/interactive/digitalsignature/visible/PDVisibleSigBuilder.class",
        "org/apache/fontbox/cmap/UniJIS-UTF16-H",
        "org/apache/fontbox/cmap/Adobe-GB1-UCS2",
      })
  void whatCouldDoHarmOrIsNeverUsedIsLeftOut(String name) throws IOException {
    try (JarFile jar = new JarFile(JAR)) {
      assertNull(jar.getEntry(name));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "org/apache/fontbox/cmap/Identity-H",
        "META-INF/LICENSE",
        "META-INF/NOTICE",
        "baysheet/fonts/LICENSE",
        "baysheet/fonts/LICENSE-Roboto",
        "baysheet/templates/blocks.ftlx",
      })
  void whatIsNeededIsThere(String name) throws IOException {
    try (JarFile jar = new JarFile(JAR)) {
      assertNotNull(jar.getEntry(name));
    }
  }

  @Test
  void noClassRefersToOneThatIsLeftOut() throws IOException {
    try (JarFile jar = new JarFile(JAR)) {
      Map<String, Set<String>> missing = new TreeMap<>();
      for (JarEntry entry : classes(jar).toList()) {
        Set<String> lost = new TreeSet<>(references(jar, entry));
        lost.removeIf(name -> !isPacked(name) || jar.getEntry(name + ".class") != null);
        if (!lost.isEmpty()) {
          missing.put(entry.getName().replace(".class", ""), lost);
        }
      }
      assertEquals(new TreeMap<>(NEVER_REACHED), missing);
    }
  }

  @Test
  void theReferencesOfEveryClassAreRead() throws IOException {
    try (JarFile jar = new JarFile(JAR)) {
      assertTrue(classes(jar).count() > 2000);
      Set<String> main = references(jar, jar.getJarEntry("baysheet/cli/Main.class"));
      assertTrue(main.contains("picocli/CommandLine"), main.toString());
    }
  }

  /** The tests that run beside this one must not find the libraries anywhere else. */
  @Test
  void theLibrariesComeFromThisJar() throws ClassNotFoundException {
    for (String name : List.of("freemarker.template.Template", "picocli.CommandLine")) {
      String from =
          Class.forName(name).getProtectionDomain().getCodeSource().getLocation().getPath();
      assertTrue(from.endsWith("/baysheet.jar"), from);
    }
    assertFalse(
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .anyMatch(path -> path.contains("freemarker-") || path.contains("pdfbox-")));
  }

  private static Stream<JarEntry> classes(JarFile jar) {
    return jar.stream()
        .filter(entry -> entry.getName().endsWith(".class"))
        .filter(entry -> !entry.getName().startsWith("META-INF/"));
  }

  private static boolean isPacked(String name) {
    return PACKED.stream().anyMatch(name::startsWith);
  }

  /**
   * The classes that a class file names, in its code and in the types of its fields and methods:
   * the constant pool of the Java VM specification, 4.4.
   */
  private static Set<String> references(JarFile jar, JarEntry entry) throws IOException {
    try (InputStream file = jar.getInputStream(entry)) {
      DataInputStream in = new DataInputStream(new BufferedInputStream(file));
      in.skipNBytes(8);
      int size = in.readUnsignedShort();
      String[] texts = new String[size];
      List<Integer> classes = new ArrayList<>();
      for (int i = 1; i < size; i++) {
        int tag = in.readUnsignedByte();
        switch (tag) {
          case 1 -> texts[i] = in.readUTF();
          case 7 -> classes.add(in.readUnsignedShort());
          case 5, 6 -> {
            in.skipNBytes(8);
            // A long or double takes two places.
            i++;
          }
          case 8, 16, 19, 20 -> in.skipNBytes(2);
          case 15 -> in.skipNBytes(3);
          case 3, 4, 9, 10, 11, 12, 17, 18 -> in.skipNBytes(4);
          default -> throw new IOException(entry.getName() + ": constant of kind " + tag);
        }
      }
      Set<String> names = new TreeSet<>();
      classes.forEach(index -> names.add(element(texts[index])));
      for (String text : texts) {
        Matcher type = TYPE.matcher(text == null ? "" : text);
        while (type.find()) {
          names.add(type.group(1));
        }
      }
      return names;
    }
  }

  /** {@code [[Ljava/lang/String;} is an array of {@code java/lang/String}. */
  private static String element(String name) {
    String bare = name.replaceFirst("^\\[+", "");
    return bare.equals(name) ? name : bare.replaceFirst("^L", "").replaceFirst(";$", "");
  }
}
