@echo off
rem Whatever the window was started with: a ! in a path is a sign like others.
setlocal EnableExtensions DisableDelayedExpansion
rem Starts ringout from wherever it lies, with blanks in the path, from a USB stick.
rem RINGOUT_JAVA_OPTS is handed to Java, for example set RINGOUT_JAVA_OPTS=-Xmx2g
set "RINGOUT_HOME=%~dp0"
set "RINGOUT_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "RINGOUT_JAVA=%JAVA_HOME%\bin\java.exe"
rem The Java that came with it goes before any other.
if exist "%RINGOUT_HOME%java\bin\java.exe" set "RINGOUT_JAVA=%RINGOUT_HOME%java\bin\java.exe"

rem What Java says of its version; nothing where there is none, or where it can't start with these options.
set "RINGOUT_VERSION="
set "RINGOUT_MAJOR=0"
for /f "tokens=2,3" %%v in ('call "%RINGOUT_JAVA%" %RINGOUT_JAVA_OPTS% -version 2^>^&1') do (
  if "%%v"=="version" if not defined RINGOUT_VERSION set "RINGOUT_VERSION=%%~w"
)
if not defined RINGOUT_VERSION (
  echo ringout: Java is missing or can't start. Install Java 17 or newer, or set JAVA_HOME to where it is; look at RINGOUT_JAVA_OPTS. 1>&2
  exit /b 70
)
for /f "tokens=1 delims=.-+" %%m in ("%RINGOUT_VERSION%") do set "RINGOUT_MAJOR=%%m"
if %RINGOUT_MAJOR% LSS 17 (
  echo ringout: needs Java 17 or newer; this one is %RINGOUT_VERSION%. 1>&2
  exit /b 70
)

rem The quick compiler starts soonest; a long run is worth the thorough one.
set "RINGOUT_COMPILER=-XX:TieredStopAtLevel=1"
call :look %*

rem A bench is open all day and mostly waits: what reading the list took is given back.
set "RINGOUT_MEMORY="
if /i "%~1"=="bench" set "RINGOUT_MEMORY=-Xms16m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25"

rem Readings are written in UTF-8; the window goes back to its own code page afterwards. Ctrl-C ends
rem this file before its last lines: then the program sets the code page back.
set "RINGOUT_CODE_PAGE="
for /f "tokens=2 delims=:." %%c in ('chcp') do set "RINGOUT_CODE_PAGE=%%c"
if defined RINGOUT_CODE_PAGE set "RINGOUT_CODE_PAGE=%RINGOUT_CODE_PAGE: =%"
chcp 65001 >nul 2>nul

"%RINGOUT_JAVA%" -Xshare:auto "-XX:SharedArchiveFile=%RINGOUT_HOME%lib\ringout.jsa" -Xlog:disable ^
  -XX:+UseSerialGC %RINGOUT_COMPILER% %RINGOUT_MEMORY% "-Dringout.codePage=%RINGOUT_CODE_PAGE%" %RINGOUT_JAVA_OPTS% ^
  -cp "%RINGOUT_HOME%lib\ringout.jar" dev.ringout.cli.Start %*
set "RINGOUT_CODE=%errorlevel%"
if defined RINGOUT_CODE_PAGE chcp %RINGOUT_CODE_PAGE% >nul 2>nul
exit /b %RINGOUT_CODE%

rem Looks for a file of more than four million bytes. Without the leading 1 a word that names no
rem file would leave the comparison one side short.
:look
if "%~1"=="" exit /b 0
if 1%~z1 GTR 14000000 set "RINGOUT_COMPILER="
shift
goto look
