# Licences of the libraries in the jar

Made by the build from the libraries of `pom.xml`; `./dev licences` writes it anew and `./dev check`
compares. Jarwise itself is under Apache-2.0 ([LICENSE](../LICENSE)). Of the libraries of Jetty, which
offer a choice, we take Apache-2.0; of xml-apis each licence covers a part. The texts and notices that a
library brings stand in the jar under `META-INF/third-party`, a folder a library. Every library also
stands, unchanged, in `target/lib`, and `target/jarwise-thin.jar` runs with those jars: anyone may put a
changed one in its place, as the LGPL wants.

The fonts in the jar, Arimo and Gentium Book Plus, are under the SIL Open Font License 1.1; its text stands
beside them in `fonts`.

| library | version | name | licence |
|---|---|---|---|
<#list dependencyMap as entry>
<#assign library = entry.getKey()>
| `${library.groupId}:${library.artifactId}` | ${library.version} | ${library.name} | ${entry.getValue()?join(", ")} |
</#list>
