@echo off
setlocal
rem Starts ringout from wherever it lies, with blanks in the path, from a USB stick.
rem RINGOUT_JAVA_OPTS is handed to Java, for example set RINGOUT_JAVA_OPTS=-Xmx2g
set "RINGOUT_HOME=%~dp0"
set "RINGOUT_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "RINGOUT_JAVA=%JAVA_HOME%\bin\java.exe"

"%RINGOUT_JAVA%" -version >nul 2>nul
if errorlevel 1 (
  echo ringout: Java is missing. Install Java 17 or newer, or set JAVA_HOME to where it is. 1>&2
  exit /b 70
)
set "RINGOUT_VERSION="
for /f "tokens=3" %%v in ('call "%RINGOUT_JAVA%" -version 2^>^&1 ^| findstr /i "version"') do (
  if not defined RINGOUT_VERSION set "RINGOUT_VERSION=%%~v"
)
for /f "tokens=1 delims=.-+" %%m in ("%RINGOUT_VERSION%") do set "RINGOUT_MAJOR=%%m"
if %RINGOUT_MAJOR% LSS 17 (
  echo ringout: needs Java 17 or newer; this one is %RINGOUT_VERSION%. 1>&2
  exit /b 70
)

"%RINGOUT_JAVA%" -Xshare:auto "-XX:SharedArchiveFile=%RINGOUT_HOME%lib\ringout.jsa" -Xlog:disable ^
  -XX:+UseSerialGC -XX:TieredStopAtLevel=1 %RINGOUT_JAVA_OPTS% ^
  -cp "%RINGOUT_HOME%lib\ringout.jar" dev.ringout.cli.Main %*
exit /b %errorlevel%
