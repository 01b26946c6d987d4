@echo off
rem Starts Heatswell from its source tree, building it first when there is no build or the sources are newer.
rem
rem   HEATSWELL_JAVA_OPTS   more options for Java, split at blanks
rem   JAVA_HOME             the Java to build and run with, instead of the first one on the path

rem Delayed expansion stays off, or it would eat exclamation marks in the arguments.
setlocal EnableExtensions DisableDelayedExpansion

set "HERE=%~dp0"
set "ROOT=%~dp0.."

set "JAVA=java"
if not defined JAVA_HOME goto java
set "JAVA=%JAVA_HOME%\bin\java.exe"
if not exist "%JAVA%" (
    echo heatswell: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it. 1>&2
    exit /b 1
)

:java
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo heatswell: Java does not start. Heatswell needs a JDK, version 17 or later, on the path or in JAVA_HOME. 1>&2
    exit /b 1
)

rem The script of the live page takes half a minute more, so it is made where a page is asked for.
set "PAGE=none"
call :newest
if not "%~1"=="page" goto jar
set "PAGE=process-classes"
if not defined JAR goto build
if not exist "%HERE%page\target\script\engine.js" goto build
powershell -NoProfile -NonInteractive -Command "$script = Get-Item -LiteralPath ($env:HERE + 'page\target\script\engine.js'); $made = $script.LastWriteTimeUtc; $jar = Get-Item -LiteralPath $env:JAR; if (($script.Length -eq 0) -or ($made -gt $jar.LastWriteTimeUtc)) { exit 3 }; foreach ($part in 'scenarios\page\pom.xml', 'core\src\main', 'scenarios\src\main\java', 'scenarios\page\src\main') { if (@(Get-ChildItem -LiteralPath (Join-Path $env:ROOT $part) -Recurse) | Where-Object { $_.LastWriteTimeUtc -gt $made }) { exit 3 } }"
if errorlevel 3 goto build
:jar
if not defined JAR goto build
rem Batch cannot compare dates whatever the country's way to write them; PowerShell can.
powershell -NoProfile -NonInteractive -Command "$built = (Get-Item -LiteralPath $env:JAR).LastWriteTimeUtc; $parts = 'pom.xml', 'core\pom.xml', 'charts\pom.xml', 'scenarios\pom.xml', 'core\src\main', 'charts\src\main', 'scenarios\src\main', 'scenarios\src\bundle'; foreach ($part in $parts) { $path = Join-Path $env:ROOT $part; if (Test-Path -LiteralPath $path) { if (@(Get-Item -LiteralPath $path; Get-ChildItem -LiteralPath $path -Recurse) | Where-Object { $_.LastWriteTimeUtc -gt $built }) { exit 3 } } }"
if errorlevel 3 goto build
goto run

:build
set "LOG=%TEMP%\heatswell-build-%RANDOM%.log"
"%JAVA%" -version >"%LOG%" 2>&1
powershell -NoProfile -NonInteractive -Command "$told = (Get-Content -LiteralPath $env:LOG) -join ' '; if (($told -match 'version .(\d+)') -and ([int]$Matches[1] -lt 17)) { exit 3 }"
set "RESULT=%ERRORLEVEL%"
if "%RESULT%"=="3" (
    echo heatswell: Heatswell needs Java 17 or later, but "%JAVA%" is older: 1>&2
    type "%LOG%" 1>&2
    del "%LOG%" >nul 2>&1
    exit /b 1
)
del "%LOG%" >nul 2>&1
set "FOUND=1"
if defined JAVA_HOME (
    if not exist "%JAVA_HOME%\bin\javac.exe" set "FOUND="
) else (
    where javac >nul 2>&1
    if errorlevel 1 set "FOUND="
)
if not defined FOUND (
    echo heatswell: "%JAVA%" can run programs, but building needs a JDK: there is no javac beside it or on the path. 1>&2
    exit /b 1
)
where mvn >nul 2>&1
if errorlevel 1 (
    echo heatswell: no mvn on the path. Building Heatswell needs Maven, version 3.8.7 or later. 1>&2
    exit /b 1
)
echo Building Heatswell once (about a minute) ... 1>&2
pushd "%ROOT%"
call mvn -B -q -Pquick -Dmaven.test.skip=true -Dheatswell.page.phase=%PAGE% package >"%LOG%" 2>&1 <nul
set "RESULT=%ERRORLEVEL%"
popd
if not "%RESULT%"=="0" (
    type "%LOG%" 1>&2
    del "%LOG%" >nul 2>&1
    echo heatswell: the build failed, see above. The first build needs a network connection. 1>&2
    exit /b 1
)
del "%LOG%" >nul 2>&1
call :newest
if not defined JAR (
    echo heatswell: the build passed but left no jar in "%HERE%target". 1>&2
    exit /b 1
)

:run
rem Most commands are short: compiling less saves about a third of their time, and copying only small methods into others some more.
rem A small nursery saves a tenth: memory used again needs no fresh pages. The others gain by compiling well.
set "COMPILE=-XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=18 -Xmn8m"
if "%~1"=="diagnose" set "COMPILE=-XX:TieredStopAtLevel=1"
if "%~1"=="spread" set "COMPILE="
if "%~1"=="map" set "COMPILE="
rem A line that is written over and over is for a terminal only, and batch cannot tell whether there is one.
"%JAVA%" %COMPILE% -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Djava.awt.headless=true -Dheatswell.terminal=false %HEATSWELL_JAVA_OPTS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:newest
set "JAR="
for /f "delims=" %%f in ('dir /b /a-d /o-d "%HERE%target\heatswell-scenarios-*-all.jar" 2^>nul') do (
    if not defined JAR set "JAR=%HERE%target\%%f"
)
exit /b 0
