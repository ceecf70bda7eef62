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
if not exist "%home%\target" mkdir "%home%\target"
"%java%" -version > "%home%\target\java-version.txt" 2>&1
set "major=0"
set "version=0"
for /f "usebackq tokens=2,3" %%a in ("%home%\target\java-version.txt") do if "%%a"=="version" set "version=%%~b"
for /f "tokens=1 delims=.-" %%m in ("%version%") do set "major=%%m"
if %major% LSS 17 (
  echo penstock: %java% is Java %major%; install a JDK, version 17 or later, or set JAVA_HOME to one 1>&2
  exit /b 1
)
call mvn -v >nul 2>&1
if errorlevel 1 (
  echo penstock: Maven was not found; install Maven 3.8 or later so that mvn is on the PATH 1>&2
  exit /b 1
)

:fetch
if defined PENSTOCK_COOLPROP goto build
set "python=%PENSTOCK_PYTHON%"
if defined python goto python
rem A Windows without Python has a program of that name all the same, which only opens a shop.
set "python=python"
"%python%" -c "" >nul 2>&1
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
type nul > "%stamp%.new"
pushd "%home%"
call mvn -B -q compile jar:jar dependency:copy-dependencies@runtime-libraries > "%home%\target\penstock-build.log" 2>&1
set "built=%errorlevel%"
popd
if not "%built%"=="0" (
  findstr /b /l /c:"[ERROR]" "%home%\target\penstock-build.log" 1>&2
  echo penstock: the build failed; everything that Maven said is in %home%\target\penstock-build.log 1>&2
  exit /b 1
)
rem Not the archives of sources and of Javadoc, which mvn install leaves there too.
pushd "%home%\target"
set "archive="
for %%f in (penstock-*.jar) do set "file=%%f" & call :choose
if defined archive copy /y "%archive%" penstock.jar >nul
popd
if not defined archive (
  echo penstock: the build left no archive in %home%\target 1>&2
  exit /b 1
)
move /y "%stamp%.new" "%stamp%" >nul

:run
rem Two choices of a collector stop Java, so its own comes only where the options name none.
set "collector=-XX:+UseSerialGC"
if not defined PENSTOCK_JAVA_OPTIONS goto java
if not "%PENSTOCK_JAVA_OPTIONS:GC=%"=="%PENSTOCK_JAVA_OPTIONS%" set "collector="
:java
rem Short commands end before the second compiler pays; long ones need it, as in the script penstock.
set "compilers=-XX:TieredStopAtLevel=1"
if "%~1"=="answer" set "compilers=-XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=0.3"
for %%c in (sweep serve sample study sensitivity optimise frontier) do if "%~1"=="%%c" set "compilers=-XX:TieredStopAtLevel=4"
rem Standard output belongs to the answer: what the virtual machine itself has to say goes to standard error, errors only.
"%java%" -Xlog:disable -Xlog:all=error:stderr %collector% %compilers% -Djava.awt.headless=true "-Dpenstock.home=%home%" %PENSTOCK_JAVA_OPTIONS% -jar "%jar%" %*
exit /b %errorlevel%

:choose
if "%file:-sources=%"=="%file%" if "%file:-javadoc=%"=="%file%" set "archive=%file%"
exit /b 0
