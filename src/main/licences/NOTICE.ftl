Jarwise
Copyright 2026 the Jarwise contributors

Licensed under the Apache License, Version 2.0; see the file LICENSE.

The runnable jar holds the libraries below under the licences named behind them. Two of Eclipse:
jakarta.servlet-api comes under EPL-2.0, its source is at https://github.com/jakartaee/servlet; of
the Jetty libraries we take Apache-2.0. The openhtmltopdf libraries come under LGPL-2.1 or later,
unchanged; target/jarwise-thin.jar runs with them as separate jars. Licence texts and notices stand
in the jar under META-INF and META-INF/third-party.

The fonts Arimo and Gentium Book Plus come under the SIL Open Font License 1.1, see fonts in the jar.

<#list dependencyMap as entry>
<#assign library = entry.getKey()>
${library.groupId}:${library.artifactId} ${library.version}: ${entry.getValue()?join(", ")}
</#list>
