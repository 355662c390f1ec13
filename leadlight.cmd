@echo off
rem Starts Leadlight from any folder; builds it first where it is missing.
rem After a change of the sources run: mvn package
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%target\leadlight.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not exist "%JAR%" (
  echo leadlight: building the program, once; this takes a minute or two 1>&2
  pushd "%HOME_DIR%"
  call mvn -q -B -Dmaven.test.skip=true package 1>&2
  popd
)
if not exist "%JAR%" (
  echo leadlight: the build failed; Java 17 and Maven 3.8 or newer are needed 1>&2
  exit /b 70
)
rem The decoder's own log lines would stand beside our one line on a bad picture.
if not defined OPENCV_LOG_LEVEL set "OPENCV_LOG_LEVEL=OFF"
"%JAVA%" -XX:+UseSerialGC -Xmx768m -Djava.awt.headless=true -Dfile.encoding=UTF-8 -jar "%JAR%" %*
exit /b %ERRORLEVEL%
