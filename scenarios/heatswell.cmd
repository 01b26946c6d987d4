@echo off
rem Starts Heatswell from its source tree, building it first when there is no build or the sources are newer.
rem
rem   HEATSWELL_JAVA_OPTS   more options for Java
rem   JAVA_HOME             the Java to build and run with, instead of the first one on the path

rem Delayed expansion stays off, or it would eat exclamation marks in the arguments.
setlocal EnableExtensions DisableDelayedExpansion

set "HERE=%~dp0"
set "ROOT=%~dp0.."

set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo heatswell: Java does not start. Heatswell needs a JDK, version 17 or later, on the path or in JAVA_HOME. 1>&2
    exit /b 1
)

call :newest
if not defined JAR goto build
rem Batch cannot compare dates whatever the country's way to write them; PowerShell can.
powershell -NoProfile -NonInteractive -Command "$built = (Get-Item -LiteralPath $env:JAR).LastWriteTimeUtc; $parts = 'pom.xml', 'core\pom.xml', 'charts\pom.xml', 'scenarios\pom.xml', 'core\src\main', 'charts\src\main', 'scenarios\src\main', 'scenarios\src\bundle'; foreach ($part in $parts) { $path = Join-Path $env:ROOT $part; if (Test-Path -LiteralPath $path) { if (@(Get-Item -LiteralPath $path; Get-ChildItem -LiteralPath $path -Recurse) | Where-Object { $_.LastWriteTimeUtc -gt $built }) { exit 3 } } }"
if errorlevel 3 goto build
goto run

:build
where mvn >nul 2>&1
if errorlevel 1 (
    echo heatswell: no mvn on the path. Building Heatswell needs Maven, version 3.8.7 or later. 1>&2
    exit /b 1
)
echo Building Heatswell once (about a minute) ... 1>&2
set "LOG=%TEMP%\heatswell-build-%RANDOM%.log"
pushd "%ROOT%"
call mvn -B -q -Pquick -Dmaven.test.skip=true package >"%LOG%" 2>&1 <nul
set "RESULT=%ERRORLEVEL%"
popd
if not "%RESULT%"=="0" (
    type "%LOG%" 1>&2
    del "%LOG%" >nul 2>&1
    echo heatswell: the build failed, see above. It needs a JDK, version 17 or later, and at first a network. 1>&2
    exit /b 1
)
del "%LOG%" >nul 2>&1
call :newest
if not defined JAR (
    echo heatswell: the build passed but left no jar in "%HERE%target". 1>&2
    exit /b 1
)

:run
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true %HEATSWELL_JAVA_OPTS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:newest
set "JAR="
for /f "delims=" %%f in ('dir /b /a-d /o-d "%HERE%target\heatswell-scenarios-*-all.jar" 2^>nul') do (
    if not defined JAR set "JAR=%HERE%target\%%f"
)
exit /b 0
