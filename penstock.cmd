@echo off
rem Runs Penstock on Windows: fetches CoolProp once, builds when it was not built yet or the sources changed.
rem Environment: JAVA_HOME (else java on PATH), PENSTOCK_PYTHON (else python or py on PATH),
rem PENSTOCK_COOLPROP (own CoolProp library instead of the fetched one), PENSTOCK_JAVA_OPTIONS (further options for Java).
setlocal EnableExtensions
set "home=%~dp0"
if "%home:~-1%"=="\" set "home=%home:~0,-1%"
set "jar=%home%\target\penstock.jar"
set "stamp=%home%\target\penstock.built"

set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo penstock: Java was not found; install a JDK, version 17 or later, or set JAVA_HOME 1>&2
  exit /b 1
)

rem A folder without sources is an unpacked release: its archives lie in it, and there is nothing to build.
if not exist "%home%\src\main" set "jar=%home%\penstock.jar"
set "stale="
if not exist "%home%\src\main" goto fetch
if not exist "%jar%" set "stale=1"
if not exist "%stamp%" set "stale=1"
if not defined stale (
  for /f %%r in ('powershell -NoProfile -Command "$built=(Get-Item -LiteralPath $env:stamp).LastWriteTimeUtc; $files=@(Get-Item -LiteralPath ($env:home+'\pom.xml'))+@(Get-ChildItem -LiteralPath ($env:home+'\src\main') -Recurse); if ($files | Where-Object { $_.LastWriteTimeUtc -gt $built } | Select-Object -First 1) { 'stale' } else { 'fresh' }"') do if "%%r"=="stale" set "stale=1"
)
rem What cannot work is said before anything is built.
if not defined stale goto fetch
where mvn >nul 2>&1
if errorlevel 1 (
  echo penstock: Maven was not found; install Maven 3.8 or later so that mvn is on the PATH 1>&2
  exit /b 1
)

:fetch
if defined PENSTOCK_COOLPROP goto build
set "python=%PENSTOCK_PYTHON%"
if defined python goto python
set "python=python"
where python >nul 2>&1
if errorlevel 1 set "python=py"
:python
"%python%" -c "" >nul 2>&1
if errorlevel 1 (
  echo penstock: %python% does not run; install Python 3 with pip ^(it brings CoolProp^), name an interpreter in PENSTOCK_PYTHON, or set PENSTOCK_COOLPROP 1>&2
  exit /b 1
)
"%python%" -E "%home%\src\build\fetch_packages.py" "%home%\.penstock" coolprop
if errorlevel 1 exit /b 1

:build
if not defined stale goto run
echo penstock: building ^(needed once, and after a change of the sources^) ... 1>&2
if not exist "%home%\target" mkdir "%home%\target"
type nul > "%stamp%.new"
pushd "%home%"
call mvn -B -q compile jar:jar dependency:copy-dependencies@runtime-libraries > "%home%\target\penstock-build.log" 2>&1
set "built=%errorlevel%"
popd
if not "%built%"=="0" (
  findstr /b "[ERROR]" "%home%\target\penstock-build.log" 1>&2
  echo penstock: the build failed; everything that Maven said is in %home%\target\penstock-build.log 1>&2
  exit /b 1
)
for %%f in ("%home%\target\penstock-*.jar") do copy /y "%%f" "%jar%" >nul
move /y "%stamp%.new" "%stamp%" >nul

:run
rem Two choices of a collector stop Java, so its own comes only where the options name none.
set "collector=-XX:+UseSerialGC"
if not defined PENSTOCK_JAVA_OPTIONS goto java
if not "%PENSTOCK_JAVA_OPTIONS:GC=%"=="%PENSTOCK_JAVA_OPTIONS%" set "collector="
:java
"%java%" %collector% -XX:TieredStopAtLevel=1 -Djava.awt.headless=true "-Dpenstock.home=%home%" %PENSTOCK_JAVA_OPTIONS% -cp "%jar%" dev.penstock.app.CommandLineProgram %*
exit /b %errorlevel%
